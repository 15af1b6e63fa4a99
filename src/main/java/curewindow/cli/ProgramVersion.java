package curewindow.cli;

import picocli.CommandLine;

/** The version, from the jar's manifest. */
final class ProgramVersion implements CommandLine.IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Curewindow.class.getPackage().getImplementationVersion();
    return new String[] {"curewindow " + (version == null ? "(not from a jar)" : version)};
  }
}
