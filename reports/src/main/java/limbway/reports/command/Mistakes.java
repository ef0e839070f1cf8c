package limbway.reports.command;

import java.util.List;

import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line, in the shape of all other messages. */
final class Mistakes {

    private Mistakes() {}

    static int explain(ParameterException mistake, String[] args) {
        CommandLine command = mistake.getCommandLine();
        Refusal refusal = refusal(mistake, command);
        command.getErr().print(refusal.getMessage());
        command.getErr().flush();
        return ExitCode.WRONG_INPUT;
    }

    private static Refusal refusal(ParameterException mistake, CommandLine command) {
        String more = "see limbway " + name(command) + "--help";
        if (mistake instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched.getUnmatched().get(0), command, more);
        }
        if (mistake instanceof MissingParameterException missing) {
            List<String> names = missing.getMissing().stream()
                    .map(arg -> arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel())
                    .toList();
            return Refusal.of("something is missing", "nothing for " + String.join(", ", names), "", more);
        }
        if (mistake.getCause() instanceof TypeConversionException unfit && mistake.getArgSpec() != null) {
            String option = mistake.getArgSpec() instanceof OptionSpec spec
                    ? spec.longestName()
                    : mistake.getArgSpec().paramLabel();
            return Refusal.of(option + " cannot be that", mistake.getValue(), unfit.getMessage(), more);
        }
        if (mistake instanceof OverwrittenOptionException twice
                && twice.getOverwritten() instanceof OptionSpec option) {
            return Refusal.of(option.longestName() + " is given twice", "", "once", "leave one of them out");
        }
        return Refusal.of(mistake.getMessage(), "", "", more);
    }

    private static Refusal unmatched(String found, CommandLine command, String more) {
        if (!command.getSubcommands().isEmpty()) {
            List<String> commands = List.copyOf(command.getSubcommands().keySet());
            return Refusal.of(
                    "there is no such command",
                    found,
                    String.join(", ", commands),
                    Refusal.guess(found, commands, more));
        }
        if (!found.startsWith("-")) {
            return Refusal.of("one word too many", found, "one scenario file", more);
        }
        String option = found.replaceAll("=.*", "");
        List<String> options = command.getCommandSpec().options().stream()
                .map(OptionSpec::longestName)
                .toList();
        return Refusal.of(
                "there is no such option", option, String.join(", ", options), Refusal.guess(option, options, more));
    }

    private static String name(CommandLine command) {
        return command.getParent() == null ? "" : command.getCommandName() + " ";
    }
}
