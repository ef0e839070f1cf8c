/**
 * The commands of {@code limbway.jar}: what they are asked, what they answer, and how they end.
 *
 * <p>Knows everything else; nothing knows it. Start at {@link limbway.reports.command.Limbway}. Exit codes are in
 * {@link limbway.reports.command.ExitCode}; a mistake of the user is a {@link limbway.reports.command.Refusal}.
 */
package limbway.reports.command;
