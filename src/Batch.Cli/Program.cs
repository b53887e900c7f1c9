using System.CommandLine;
using System.Globalization;
using System.Runtime.InteropServices;
using Batch.Cli.Commands;
using Batch.Cli.Pipeline;

namespace Batch.Cli;

/// <summary>The program.</summary>
public static class Program
{
    /// <summary>Runs a command line.</summary>
    /// <param name="args">Arguments.</param>
    /// <returns>One of <see cref="ExitStatus"/>.</returns>
    public static int Main(string[] args) => Run(args, Console.Out, Console.Error);

    /// <summary>Runs a command line with given outputs.</summary>
    /// <param name="args">Arguments.</param>
    /// <param name="output">Receives answers.</param>
    /// <param name="errors">Receives complaints and progress.</param>
    /// <returns>One of <see cref="ExitStatus"/>.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter errors)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        using var interrupt = new CancellationTokenSource();
        void Stop(object? sender, ConsoleCancelEventArgs e)
        {
            e.Cancel = !interrupt.IsCancellationRequested; // pressed again it ends the program at once
            interrupt.Cancel();
        }

        Console.CancelKeyPress += Stop;

        // The server of the board takes this signal for itself alone; the whole program is meant.
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, context =>
        {
            context.Cancel = !interrupt.IsCancellationRequested;
            interrupt.Cancel();
        });
        if (Array.Exists(args, IsEmpty))
        {
            errors.WriteLine("A name or value on the command line is empty, as a variable of the shell that is not set makes it. Nothing was done.");
            return ExitStatus.BadInput;
        }

        try
        {
            var parsed = CommandTree.Build(new Terminal(output, errors), interrupt.Token).Parse(args);
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors) errors.WriteLine(error.Message);
                foreach (var hint in CommandTree.Hints(parsed)) errors.WriteLine(hint);
                errors.WriteLine($"'tripbatch {string.Join(' ', CommandTree.PathOf(parsed).Append("--help"))}' shows how it is used.");
                return ExitStatus.BadInput;
            }

            return parsed.Invoke(new InvocationConfiguration
            {
                Output = output,
                Error = errors,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null
            });
        }
        catch (InputException error)
        {
            errors.WriteLine(error.Message);
            return ExitStatus.BadInput;
        }
        catch (OperationCanceledException)
        {
            errors.WriteLine("Interrupted; the last finished run stands as it was.");
            return ExitStatus.ProgramFault;
        }
#pragma warning disable CA1031 // One of the two places that catch everything: whatever happens, the user gets a sentence and a status.
        catch (Exception error)
#pragma warning restore CA1031
        {
            errors.WriteLine("A fault of the program, please report it:");
            errors.WriteLine(error);
            return ExitStatus.ProgramFault;
        }
        finally
        {
            Console.CancelKeyPress -= Stop;
        }
    }

    /// <summary>An empty argument, or an option with nothing after its <c>=</c>: it would mean "all" or "here" where the user named something.</summary>
    private static bool IsEmpty(string argument) => string.IsNullOrWhiteSpace(argument)
        || (argument.StartsWith("--", StringComparison.Ordinal) && argument.IndexOf('=', StringComparison.Ordinal) == argument.Length - 1);
}
