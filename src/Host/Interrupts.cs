using System.Runtime.InteropServices;

namespace Slantwise.Host;

/// <summary>Turns Ctrl-C and a request to end into a cancelled token, from the first line of the program to its last.</summary>
/// <remarks>
/// The command line library listens only once a command has first waited for something, and the web server only while it runs.
/// A desk that was asked to end right after its start has been seen to answer with the exit code of a killed program.
/// </remarks>
internal sealed class Interrupts : IDisposable
{
    // Long enough to finish a commit or stop the desk, short enough for somebody waiting at a terminal.
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(8);

    private readonly CancellationTokenSource _asked = new();
    private readonly PosixSignalRegistration _interrupt, _terminate;

    public Interrupts()
    {
        _interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => Ask(signal, 130));
        _terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Ask(signal, 143));
    }

    /// <summary>Cancelled once somebody asks the program to end.</summary>
    public CancellationToken Asked => _asked.Token;

    public void Dispose()
    {
        _interrupt.Dispose();
        _terminate.Dispose();
    }

    private void Ask(PosixSignalContext signal, int exitCode)
    {
        signal.Cancel = true;
        // A second Ctrl-C does not wait for the first.
        if (_asked.IsCancellationRequested) Environment.Exit(exitCode);
        _asked.CancelAsync();
        _ = Task.Delay(Grace).ContinueWith(_ => Environment.Exit(exitCode), TaskScheduler.Default);
    }
}
