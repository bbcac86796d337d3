package keenward.endtoend.architecture.crooked.files;

/** A reader of files. */
public record Reader(String file) {}
