package keenward.papers;

/**
 * A paper before its template is filled.
 *
 * @param name its name, fit for a file name
 * @param title its title
 * @param reader for whom it is
 * @param template file name of its template
 * @param running what stands at the head of every page beside the title; empty for nothing
 * @param view what the template sees
 */
record Sheet(String name, String title, String reader, String template, String running, View view) {

  static Sheet of(String name, String title, String reader, View view) {
    return new Sheet(name, title, reader, name + ".html", "", view);
  }
}
