package afterweld.cli;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The rules of the house: data flows one way, the simulator computes and nothing else. */
class ArchitectureTest {
  /** Ground floor first: a package uses only packages named before it. */
  private static final List<String> FLOORS =
      List.of(
          "quantity",
          "material",
          "thermal",
          "metallurgy",
          "strength",
          "weld",
          "weldmetal",
          "section",
          "joint",
          "choice",
          "study",
          "casefile",
          "document",
          "charts",
          "cli");

  /**
   * The door for programs: it sees the whole simulator, and only the command line comes in by it.
   */
  private static final String LIBRARY = "afterweld";

  private static final String[] SIMULATOR =
      FLOORS.subList(0, FLOORS.indexOf("charts")).stream()
          .map(ArchitectureTest::all)
          .toArray(String[]::new);

  /** What it takes to read a resource and to write text into memory; none of it opens a file. */
  private static final String MEMORY_IO =
      "java\\.io\\.(InputStream|InputStreamReader|BufferedReader|Reader|StringReader|StringWriter"
          + "|Writer|ByteArrayInputStream|ByteArrayOutputStream|IOException|UncheckedIOException"
          + "|Serializable|Closeable)";

  private static final int LARGEST_PACKAGE = 40;
  private static final String TOUR = "package-info.java";

  private static JavaClasses house;

  @BeforeAll
  static void readClasses() {
    house =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("afterweld");
  }

  private static String all(String floor) {
    return "afterweld." + floor + "..";
  }

  private static DescribedPredicate<JavaClass> above(int floor) {
    return resideInAnyPackage(
        FLOORS.subList(floor + 1, FLOORS.size()).stream()
            .map(ArchitectureTest::all)
            .toArray(String[]::new));
  }

  @Test
  void everyPackageHasItsFloor() {
    Set<String> found =
        house.stream()
            .filter(type -> !type.getPackageName().equals(LIBRARY))
            .map(type -> type.getPackageName().split("\\.", -1)[1])
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(FLOORS.containsAll(found), "packages without a floor: " + found);
  }

  @Test
  void nothingReachesUpwards() {
    for (int floor = 0; floor + 1 < FLOORS.size(); floor++) {
      noClasses()
          .that(resideInAPackage(all(FLOORS.get(floor))))
          .should()
          .dependOnClassesThat(above(floor))
          .allowEmptyShould(true)
          .check(house);
    }
  }

  @Test
  void onlyTheCommandLineComesInByTheDoorForPrograms() {
    noClasses()
        .that(resideInAnyPackage(SIMULATOR).or(resideInAPackage(all("charts"))))
        .should()
        .dependOnClassesThat(resideInAPackage(LIBRARY))
        .check(house);
    noClasses()
        .that(resideInAPackage(LIBRARY))
        .should()
        .dependOnClassesThat(resideInAnyPackage(all("charts"), all("cli")))
        .check(house);
  }

  @Test
  void nothingRunsInCircles() {
    slices().matching("afterweld.(**)").should().beFreeOfCycles().check(house);
  }

  @Test
  void theSimulatorOpensNoFile() {
    DescribedPredicate<JavaClass> files =
        resideInAnyPackage("java.io..", "java.nio.file..", "java.net..")
            .and(DescribedPredicate.not(nameMatching(MEMORY_IO)))
            .as("files, sockets or streams to them");
    noClasses()
        .that(resideInAnyPackage(SIMULATOR))
        .should()
        .dependOnClassesThat(files)
        .check(house);
  }

  @Test
  void nobodyButTheCommandLinePrintsOrEndsTheProcess() {
    noClasses()
        .that(DescribedPredicate.not(resideInAPackage(all("cli"))))
        .should(ACCESS_STANDARD_STREAMS)
        .check(house);
    noClasses()
        .that(DescribedPredicate.not(nameMatching("afterweld.cli.Main")))
        .should()
        .callMethod(System.class, "exit", int.class)
        .check(house);
  }

  @Test
  void theSimulatorKnowsNoPictureAndNoCommand() {
    noClasses()
        .that(resideInAnyPackage(SIMULATOR))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                "java.awt..",
                "javax.swing..",
                "javax.imageio..",
                "org.knowm..",
                "org.apache.batik.."))
        .check(house);
    classes()
        .that(DescribedPredicate.not(resideInAPackage(all("cli"))))
        .should()
        .onlyDependOnClassesThat(DescribedPredicate.not(resideInAPackage("picocli..")))
        .check(house);
  }

  /** A room that a reader can look round in, with a tour at its door. */
  @Test
  void everyPackageIsSmallAndTellsWhatItIsFor() throws IOException {
    List<String> faults = new ArrayList<>();
    for (String module : List.of("simulator", "charts", "cli")) {
      Path root = Path.of("..", module, "src", "main", "java");
      try (Stream<Path> folders = Files.walk(root).filter(Files::isDirectory)) {
        for (Path folder : folders.toList()) {
          long types = javaFiles(folder).filter(name -> !name.equals(TOUR)).count();
          if (types > LARGEST_PACKAGE) {
            faults.add(folder + " has " + types + " files");
          }
          if (types > 0 && javaFiles(folder).noneMatch(TOUR::equals)) {
            faults.add(folder + " has no " + TOUR);
          }
        }
      }
    }
    assertEquals(List.of(), faults);
  }

  private static Stream<String> javaFiles(Path folder) {
    return Arrays.stream(folder.toFile().list())
        .filter(name -> name.endsWith(".java") && !name.equals("module-info.java"));
  }

  @Test
  void theHouseIsNotEmpty() {
    assertTrue(house.size() > 50, "only " + house.size() + " classes were found");
  }
}
