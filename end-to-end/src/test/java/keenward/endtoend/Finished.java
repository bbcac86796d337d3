package keenward.endtoend;

/**
 * What a program left behind.
 *
 * @param exitCode 0 to 255
 * @param output what it wrote to standard output
 * @param errors what it wrote to standard error
 */
public record Finished(int exitCode, String output, String errors) {}
