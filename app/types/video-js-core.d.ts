// The part of video.js without its streaming engine; the package declares types for the whole only.
declare module "video.js/core" {
  import videojs from "video.js";
  export default videojs;
}
