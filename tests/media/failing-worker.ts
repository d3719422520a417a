// Stands for a reader with a fault of its own.
throw new Error("no memory left");
