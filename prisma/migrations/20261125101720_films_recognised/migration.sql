-- DropIndex
DROP INDEX "Place_rootId_path_key";

-- AlterTable
ALTER TABLE "Place" ADD COLUMN "fingerprint" TEXT NOT NULL DEFAULT '';

-- CreateIndex
CREATE UNIQUE INDEX "Place_rootId_path_recordingId_key" ON "Place"("rootId", "path", "recordingId");
