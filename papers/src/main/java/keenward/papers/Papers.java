package keenward.papers;

import java.util.ArrayList;
import java.util.List;

/** Writes the papers of a site. */
public final class Papers {

  private final PapersInput input;
  private final Templates templates;

  private Papers(PapersInput input, TemplateSource source) {
    this.input = input;
    templates = new Templates(source);
  }

  /**
   * All papers. The same input gives the same text.
   *
   * @throws TemplateProblem when a template of somebody's own cannot be used
   */
  public static Pack compose(PapersInput input, TemplateSource source) {
    return new Papers(input, source).pack();
  }

  private Pack pack() {
    List<Sheet> sheets =
        List.of(
            FindingsSheet.of(input),
            DrawingSheet.of(input),
            WalksSheet.of(input),
            ZoneScheduleSheet.of(input),
            BatterySheet.of(input),
            EnteringSheet.of(input),
            TestSheet.of(input),
            AccountSheet.of(input),
            OwnersSheet.of(input),
            LabelSheet.of(input),
            RehearsalSheet.of(input));
    List<Paper> papers = sheets.stream().map(this::paper).toList();
    View contents =
        CoverSheet.of(input, papers).text("code", PlanCode.svg(PlanCode.text("cover", input)));
    String cover = templates.fill("cover.html", common(contents));
    String index = file(input.plan().site().name(), templates.fill("index.html", common(contents)));
    return new Pack(
        papers, cover, index, input.plan().site().name(), size -> printed(size, papers, cover));
  }

  private Paper paper(Sheet sheet) {
    View view = common(sheet.view()).text("name", sheet.name()).text("title", sheet.title());
    view.text("running", sheet.running());
    view.text("code", PlanCode.svg(PlanCode.text(sheet.name(), input)));
    String body = templates.fill(sheet.template(), view);
    return new Paper(sheet.name(), sheet.title(), sheet.reader(), body, file(sheet.title(), body));
  }

  private View common(View view) {
    return view.text("site", input.plan().site().name())
        .text("plan-hash", input.planHash())
        .text("short-hash", input.shortHash())
        .text("date", input.date().toString())
        .text("version", input.version());
  }

  private String file(String title, String body) {
    return templates.fill(
        "file.html",
        common(new View())
            .text("title", title)
            .text("style", templates.style("print.css") + templates.style("screen.css"))
            .text("body", body));
  }

  private String printed(PaperSize size, List<Paper> papers, String cover) {
    List<View> bookmarks = new ArrayList<>();
    List<View> bodies = new ArrayList<>();
    for (Paper paper : papers) {
      bookmarks.add(new View().text("title", paper.title()).text("name", paper.name()));
      bodies.add(new View().text("body", paper.body()));
    }
    return templates.fill(
        "pack.html",
        common(new View())
            .text("style", templates.style("print.css") + size.pageRules())
            .text("cover", cover)
            .views("bookmarks", bookmarks)
            .views("papers", bodies));
  }
}
