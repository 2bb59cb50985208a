package afterweld.cli.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote. */
public final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() throws IOException {
    try (InputStream text = Version.class.getResourceAsStream("/afterweld/cli/version.txt")) {
      return new String[] {new String(text.readAllBytes(), StandardCharsets.UTF_8).strip()};
    }
  }
}
