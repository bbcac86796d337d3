package keenward.files.picture;

import keenward.files.Problem;

/** What came of reading a picture. */
public sealed interface PictureReading {

  /** It is a picture. */
  record Read(Picture picture) implements PictureReading {}

  /** It cannot be used. */
  record Refused(Problem problem) implements PictureReading {}
}
