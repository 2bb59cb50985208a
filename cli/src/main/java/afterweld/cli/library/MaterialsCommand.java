package afterweld.cli.library;

import afterweld.casefile.AlloyNames;
import afterweld.casefile.Choices;
import afterweld.cli.command.UnitsOption;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.AlloyJson;
import afterweld.material.Alloy;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The library of alloys and fillers, for people. */
@Command(
    name = "materials",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Alloys, tempers and fillers known, with the source of each value.",
    footerHeading = "%nExamples:%n",
    footer = {"  afterweld materials", "  afterweld materials 6061 --units us"})
public final class MaterialsCommand implements Callable<Integer> {
  private final Streams streams;
  private final Supplier<List<Alloy>> library;

  @Mixin private UnitsOption unitsOption;

  @Option(names = "--json", description = "Print the library as JSON, metric, and nothing else.")
  private boolean json;

  @Parameters(
      paramLabel = "ALLOY",
      arity = "0..1",
      description = "One alloy or filler to show in full.")
  private Optional<String> name = Optional.empty();

  public MaterialsCommand(Streams streams, Supplier<List<Alloy>> library) {
    this.streams = streams;
    this.library = library;
  }

  @Override
  public Integer call() {
    List<Alloy> alloys = library.get();
    String text = json ? json(alloys) : text(alloys);
    streams.out().print(text);
    return ExitStatus.DONE;
  }

  private String text(List<Alloy> alloys) {
    return name.map(wanted -> new AlloySheet(find(alloys, wanted), unitsOption.units()).text())
        .orElseGet(() -> new AlloyList(alloys, unitsOption.units()).text());
  }

  private String json(List<Alloy> alloys) {
    return name.map(wanted -> AlloyJson.of(find(alloys, wanted)))
        .orElseGet(() -> AlloyJson.of(alloys));
  }

  private static Alloy find(List<Alloy> alloys, String wanted) {
    Choices<Alloy> known = AlloyNames.of(alloys);
    return known.find(wanted).orElseThrow(() -> new InputFault(unknown(known, wanted)));
  }

  private static String unknown(Choices<Alloy> known, String wanted) {
    return AlloyNames.uncomputed(wanted)
        .map(advice -> Paragraph.printable(wanted) + " is " + advice)
        .orElseGet(
            () ->
                "no alloy or filler '"
                    + Paragraph.printable(wanted)
                    + "' in the library"
                    + known.hint(wanted)
                    + " ('afterweld materials' lists them all)");
  }
}
