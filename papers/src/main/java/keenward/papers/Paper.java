package keenward.papers;

/**
 * One finished paper.
 *
 * @param name its name in lower case with hyphens, fit for a file name
 * @param title its title
 * @param reader for whom it is
 * @param body its content, a well-formed fragment of HTML
 * @param html the paper as a file of its own: style and pictures are inside
 */
public record Paper(String name, String title, String reader, String body, String html) {}
