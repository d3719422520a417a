import { projectPath } from "../root.ts";

/** The fonts a print is set in; no other is named. Source Sans for words, Source Code for readings, DejaVu for signs. */
const files = {
  words: [
    "@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf",
    "@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf",
  ],
  readings: [
    "@expo-google-fonts/source-code-pro/400Regular/SourceCodePro_400Regular.ttf",
    "@expo-google-fonts/source-code-pro/600SemiBold/SourceCodePro_600SemiBold.ttf",
  ],
  signs: ["dejavu-fonts-ttf/ttf/DejaVuSans.ttf", "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf"],
};

/** Absolute paths of the font files of each role; in each role regular first, then bold. */
export function fontFiles(): Record<keyof typeof files, string[]> {
  const path = (file: string) => projectPath("node_modules", ...file.split("/"));
  return { words: files.words.map(path), readings: files.readings.map(path), signs: files.signs.map(path) };
}
