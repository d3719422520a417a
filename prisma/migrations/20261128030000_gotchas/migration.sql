-- CreateTable
CREATE TABLE "Gotcha" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "symptom" TEXT NOT NULL,
    "mechanism" TEXT NOT NULL,
    "cause" TEXT NOT NULL,
    "consequence" TEXT NOT NULL,
    "severity" TEXT NOT NULL,
    "tell" TEXT NOT NULL,
    "avoid" TEXT NOT NULL,
    "mend" TEXT NOT NULL,
    "appliesToJson" TEXT NOT NULL,
    "notToJson" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "sourceNote" TEXT NOT NULL,
    "cost" TEXT NOT NULL,
    "supersedesJson" TEXT NOT NULL,
    "joinedInto" TEXT,
    "notSameJson" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "noted" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL
);

-- CreateTable
CREATE TABLE "Sighting" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "gotchaId" TEXT NOT NULL,
    "outcome" TEXT NOT NULL,
    "at" TEXT NOT NULL,
    "buildId" TEXT,
    "machineId" TEXT,
    "markId" TEXT,
    "machine" TEXT NOT NULL,
    "assembly" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "origin" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Sighting_gotchaId_fkey" FOREIGN KEY ("gotchaId") REFERENCES "Gotcha" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateIndex
CREATE INDEX "Sighting_gotchaId_idx" ON "Sighting"("gotchaId");

-- CreateIndex
CREATE INDEX "Sighting_buildId_idx" ON "Sighting"("buildId");
