-- What is drawn on a still and how it is shown; of a still from before, nothing, as it was taken.
ALTER TABLE "Still" ADD COLUMN "drawingJson" TEXT NOT NULL DEFAULT '{"version":1,"view":"","quarter":0,"straighten":0,"crop":{"x":0,"y":0,"width":1,"height":1},"light":0,"balloons":[],"dimensions":[]}';
