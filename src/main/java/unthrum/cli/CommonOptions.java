package unthrum.cli;

import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;

/** The options that every command has. */
final class CommonOptions implements IVersionProvider {

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Show which unthrum and which Java this is.")
    private boolean version;

    @Override
    public String[] getVersion() {
        String unthrum = new String(Resources.bytes("unthrum/version.txt"), StandardCharsets.UTF_8).strip();
        return new String[] {"unthrum " + unthrum + ", Java " + Runtime.version()};
    }
}
