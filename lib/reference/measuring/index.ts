export {
  againstMaximum,
  combinedUncertainty,
  expandedUncertainty,
  resolutionSuits,
  uncertaintyOfLimits,
  uncertaintyOfResolution,
  uncertaintyRatio,
} from "./measuring.ts";
