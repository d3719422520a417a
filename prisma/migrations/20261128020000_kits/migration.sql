-- CreateTable
CREATE TABLE "Kit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "supplier" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "linesJson" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Kit_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Kit_buildId_idx" ON "Kit"("buildId");
