-- CreateTable
CREATE TABLE "Cut" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "form" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "rate" TEXT NOT NULL,
    "startsAt" TEXT NOT NULL,
    "publishedAt" TEXT NOT NULL,
    "reelsJson" TEXT NOT NULL,
    "segmentsJson" TEXT NOT NULL,
    "rank" REAL NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Cut_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Cut_buildId_idx" ON "Cut"("buildId");
