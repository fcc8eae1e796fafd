namespace Slantwise.Records.Floor.Rooms;

/// <summary>Work that may wait: one piece at a time in the whole program, and after each a pause as long as it took, so that acknowledgements always have a processor.</summary>
internal sealed class SideWork(TimeProvider clock)
{
    private readonly SemaphoreSlim _turn = new(1, 1);

    /// <summary>Does a piece of work when its turn comes.</summary>
    /// <param name="work">The work.</param>
    /// <param name="cancel">Gives up waiting.</param>
    public async Task DoAsync(Func<Task> work, CancellationToken cancel)
    {
        await _turn.WaitAsync(cancel);
        var start = clock.GetTimestamp();
        try
        {
            await work();
        }
        finally
        {
            _ = Task.Delay(clock.GetElapsedTime(start), clock, CancellationToken.None).ContinueWith(_ => _turn.Release(), CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
        }
    }
}
