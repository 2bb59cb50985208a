package afterweld.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ValidationTest {
  private static final Path PAGE = Path.of("VALIDATION.md");
  private static final Path PLOT = Path.of("validation.svg");
  private static final Path ERRORS =
      Path.of("src", "main", "resources", "afterweld", "strength", "model_error.csv");

  @Test
  void thePageSaysWhatTheCodeGives() throws IOException {
    String text = new ValidationPage().text();
    if (Boolean.getBoolean("afterweld.validation.write")) {
      Files.writeString(PAGE, text);
    }
    assertEquals(text, Files.readString(PAGE), "write the page anew with mvn -Pvalidation verify");
  }

  @Test
  void thePictureShowsWhatTheCodeGives() throws IOException {
    String svg = new ValidationPage().plot();
    if (Boolean.getBoolean("afterweld.validation.write")) {
      Files.writeString(PLOT, svg);
    }
    assertEquals(svg, Files.readString(PLOT), "draw it anew with mvn -Pvalidation verify");
  }

  @Test
  void theModelErrorOfTheSpreadIsThatOfTheseRows() throws IOException {
    String text = ModelErrorFile.text();
    if (Boolean.getBoolean("afterweld.validation.write")) {
      Files.writeString(ERRORS, text);
    }
    assertEquals(
        text, Files.readString(ERRORS), "write the file anew with mvn -Pvalidation verify");
  }

  @Test
  void everyPublishedRowIsComparedUnlessItIsAnInput() {
    for (PublishedRow row : PublishedRow.all()) {
      assertTrue(row.putIn() || !Predictions.of(row).isEmpty(), row.id());
      assertFalse(row.source().isBlank(), row.id());
    }
  }

  /** A row that agrees to the last figure in every number was put in, not predicted. */
  @Test
  void noTestRowGivesBackWhatWasPutIn() {
    for (PublishedRow row : PublishedRow.all()) {
      List<Comparison> numbers = Predictions.of(row).stream().filter(one -> !one.isFact()).toList();
      boolean same =
          !numbers.isEmpty()
              && numbers.stream().allMatch(one -> Math.abs(one.errorPercent()) < 0.05);
      assertEquals(same, row.putIn() && !numbers.isEmpty(), row.id());
    }
  }
}
