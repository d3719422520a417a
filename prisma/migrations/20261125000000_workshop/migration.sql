-- CreateTable
CREATE TABLE "Machine" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "name" TEXT NOT NULL,
    "maker" TEXT NOT NULL,
    "model" TEXT NOT NULL,
    "years" TEXT NOT NULL,
    "serial" TEXT NOT NULL,
    "variant" TEXT NOT NULL,
    "notes" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL
);

-- CreateTable
CREATE TABLE "Assembly" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "machineId" TEXT NOT NULL,
    "parentId" TEXT,
    "name" TEXT NOT NULL,
    "rank" REAL NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Assembly_machineId_fkey" FOREIGN KEY ("machineId") REFERENCES "Machine" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Assembly_parentId_fkey" FOREIGN KEY ("parentId") REFERENCES "Assembly" ("id") ON DELETE NO ACTION ON UPDATE NO ACTION
);

-- CreateTable
CREATE TABLE "Item" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "machineId" TEXT NOT NULL,
    "assemblyId" TEXT,
    "name" TEXT NOT NULL,
    "partNumber" TEXT NOT NULL,
    "material" TEXT NOT NULL,
    "notes" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Item_machineId_fkey" FOREIGN KEY ("machineId") REFERENCES "Machine" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Item_assemblyId_fkey" FOREIGN KEY ("assemblyId") REFERENCES "Assembly" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Build" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "machineId" TEXT NOT NULL,
    "assemblyId" TEXT,
    "title" TEXT NOT NULL,
    "summary" TEXT NOT NULL,
    "language" TEXT NOT NULL,
    "decimal" TEXT NOT NULL,
    "warnAhead" REAL NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Build_machineId_fkey" FOREIGN KEY ("machineId") REFERENCES "Machine" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Build_assemblyId_fkey" FOREIGN KEY ("assemblyId") REFERENCES "Assembly" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Sitting" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "stage" TEXT NOT NULL,
    "began" TEXT,
    "beganTrust" TEXT NOT NULL,
    "rank" REAL NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Sitting_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Recording" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "sittingId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "offset" REAL NOT NULL,
    "rate" REAL NOT NULL,
    "madeAt" TEXT,
    "madeAtTrust" TEXT NOT NULL,
    "probeJson" TEXT NOT NULL,
    "troubleJson" TEXT NOT NULL,
    "publishedAt" TEXT NOT NULL,
    "sha256" TEXT,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Recording_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Recording_sittingId_fkey" FOREIGN KEY ("sittingId") REFERENCES "Sitting" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Root" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "path" TEXT NOT NULL,
    "own" BOOLEAN NOT NULL
);

-- CreateTable
CREATE TABLE "Place" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "recordingId" TEXT NOT NULL,
    "rootId" TEXT NOT NULL,
    "path" TEXT NOT NULL,
    "size" REAL NOT NULL,
    "modifiedAt" REAL NOT NULL,
    "role" TEXT NOT NULL,
    CONSTRAINT "Place_recordingId_fkey" FOREIGN KEY ("recordingId") REFERENCES "Recording" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Place_rootId_fkey" FOREIGN KEY ("rootId") REFERENCES "Root" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "CaptionTrack" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "recordingId" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "clock" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "CaptionTrack_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "CaptionTrack_recordingId_fkey" FOREIGN KEY ("recordingId") REFERENCES "Recording" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Mark" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "sittingId" TEXT NOT NULL,
    "recordingId" TEXT,
    "at" REAL,
    "until" REAL,
    "rank" REAL NOT NULL,
    "kind" TEXT NOT NULL,
    "fieldsJson" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Mark_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Mark_sittingId_fkey" FOREIGN KEY ("sittingId") REFERENCES "Sitting" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Mark_recordingId_fkey" FOREIGN KEY ("recordingId") REFERENCES "Recording" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Still" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "markId" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "recordingId" TEXT,
    "at" REAL,
    "sha256" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "alt" TEXT NOT NULL,
    "rank" REAL NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Still_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Still_markId_fkey" FOREIGN KEY ("markId") REFERENCES "Mark" ("id") ON DELETE RESTRICT ON UPDATE CASCADE,
    CONSTRAINT "Still_recordingId_fkey" FOREIGN KEY ("recordingId") REFERENCES "Recording" ("id") ON DELETE SET NULL ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Edit" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "markId" TEXT NOT NULL,
    "edit" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "basis" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Edit_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Answer" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "buildId" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "evidence" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "gone" TEXT,
    "rev" INTEGER NOT NULL,
    CONSTRAINT "Answer_buildId_fkey" FOREIGN KEY ("buildId") REFERENCES "Build" ("id") ON DELETE RESTRICT ON UPDATE CASCADE
);

-- CreateTable
CREATE TABLE "Change" (
    "seq" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "id" TEXT NOT NULL,
    "buildId" TEXT,
    "at" TEXT NOT NULL,
    "label" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "ofSeq" INTEGER,
    "entriesJson" TEXT NOT NULL
);

-- CreateTable
CREATE TABLE "Setting" (
    "name" TEXT NOT NULL PRIMARY KEY,
    "value" TEXT NOT NULL
);

-- CreateIndex
CREATE INDEX "Assembly_machineId_idx" ON "Assembly"("machineId");

-- CreateIndex
CREATE INDEX "Item_machineId_idx" ON "Item"("machineId");

-- CreateIndex
CREATE INDEX "Build_machineId_idx" ON "Build"("machineId");

-- CreateIndex
CREATE INDEX "Sitting_buildId_idx" ON "Sitting"("buildId");

-- CreateIndex
CREATE INDEX "Recording_buildId_idx" ON "Recording"("buildId");

-- CreateIndex
CREATE INDEX "Recording_sittingId_idx" ON "Recording"("sittingId");

-- CreateIndex
CREATE UNIQUE INDEX "Root_path_key" ON "Root"("path");

-- CreateIndex
CREATE INDEX "Place_recordingId_idx" ON "Place"("recordingId");

-- CreateIndex
CREATE UNIQUE INDEX "Place_rootId_path_key" ON "Place"("rootId", "path");

-- CreateIndex
CREATE INDEX "CaptionTrack_buildId_idx" ON "CaptionTrack"("buildId");

-- CreateIndex
CREATE INDEX "Mark_buildId_idx" ON "Mark"("buildId");

-- CreateIndex
CREATE INDEX "Still_buildId_idx" ON "Still"("buildId");

-- CreateIndex
CREATE INDEX "Still_markId_idx" ON "Still"("markId");

-- CreateIndex
CREATE INDEX "Edit_buildId_idx" ON "Edit"("buildId");

-- CreateIndex
CREATE INDEX "Answer_buildId_idx" ON "Answer"("buildId");

-- CreateIndex
CREATE UNIQUE INDEX "Change_id_key" ON "Change"("id");

-- CreateIndex
CREATE INDEX "Change_buildId_seq_idx" ON "Change"("buildId", "seq");
