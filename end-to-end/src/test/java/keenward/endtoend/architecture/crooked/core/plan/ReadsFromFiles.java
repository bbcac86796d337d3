package keenward.endtoend.architecture.crooked.core.plan;

import keenward.endtoend.architecture.crooked.files.Reader;

/** A room that leans on one below it. */
public record ReadsFromFiles(Reader reader) {}
