-- Releases of a build, and what was reported against them.
CREATE TABLE "Release" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "revision" TEXT NOT NULL,
    "date" TEXT NOT NULL,
    "changed" TEXT NOT NULL,
    "again" TEXT NOT NULL,
    "contentHash" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Release_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

CREATE TABLE "Erratum" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "releaseId" TEXT NOT NULL,
    "reportedAt" TEXT NOT NULL,
    "words" TEXT NOT NULL,
    "markId" TEXT,
    "value" TEXT NOT NULL,
    "disposition" TEXT NOT NULL,
    "correction" TEXT NOT NULL,
    "mendedIn" TEXT,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Erratum_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Erratum_releaseId_fkey" FOREIGN KEY ("releaseId") REFERENCES "Release" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

CREATE INDEX "Release_buildId_idx" ON "Release"("buildId");

CREATE INDEX "Erratum_buildId_idx" ON "Erratum"("buildId");
