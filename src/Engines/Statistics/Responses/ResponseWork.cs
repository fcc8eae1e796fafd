namespace Slantwise.Engines.Statistics.Responses;

/// <summary>How the work of a fit is done. The number of threads does not change the answer by a single bit.</summary>
/// <param name="ThreadCount">How many threads may work at once, 1 or more.</param>
/// <param name="Progress">Told how far the fit is, from 0 to 1 and never backwards; none to tell nobody.</param>
/// <param name="Cancellation">Ends the fit within one pass over the trials.</param>
public sealed record ResponseWork(int ThreadCount = 1, IProgress<ResponseProgress>? Progress = null, CancellationToken Cancellation = default)
{
    /// <summary>
    /// A fit of nearly the same trials, to begin where it ended: in a lesson, the one before the last entry. It changes how long the search takes, and the
    /// answer only within the tolerance. Of no use, and not used, where pupils, levels or coefficients are others.
    /// </summary>
    public ResponseFit? Near { get; init; }

    /// <summary>
    /// How large a piece of work is, in terms of the likelihood, 1 or more. Pieces are summed in a fixed order whatever the threads;
    /// another size changes the order and with it the last digits.
    /// </summary>
    public int PieceTermCount { get; init; } = 512;
}
