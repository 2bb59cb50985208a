package afterweld.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote beside this class. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() throws IOException {
    try (InputStream text = Version.class.getResourceAsStream("version.txt")) {
      return new String[] {new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()};
    }
  }
}
