-- CreateTable
CREATE TABLE "DraftDecision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "recordingId" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "at" REAL NOT NULL,
    "until" REAL NOT NULL,
    "value" TEXT NOT NULL,
    "verdict" TEXT NOT NULL,
    "markId" TEXT,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "DraftDecision_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "DraftDecision_recordingId_fkey" FOREIGN KEY ("recordingId") REFERENCES "Recording" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "DraftDecision_buildId_idx" ON "DraftDecision"("buildId");
