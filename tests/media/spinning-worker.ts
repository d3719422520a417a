// Stands for a reader that a damaged file has caught in a circle.
for (;;) Math.random();
