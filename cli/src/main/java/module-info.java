/** The command line and the classroom. */
module afterweld.cli {
  requires afterweld.charts;
  requires com.fasterxml.jackson.core;
  requires com.fasterxml.jackson.databind;
  requires com.fasterxml.jackson.dataformat.yaml;
  requires info.picocli;
  requires jdk.httpserver;

  opens afterweld.cli to
      info.picocli;
  opens afterweld.cli.choice to
      info.picocli;
  opens afterweld.cli.command to
      info.picocli;
  opens afterweld.cli.library to
      info.picocli;
  opens afterweld.cli.profile to
      info.picocli;
  opens afterweld.cli.study to
      info.picocli;
  opens afterweld.cli.terminal to
      info.picocli;
}
