namespace Slantwise.Engines.Statistics.Holds;

/// <summary>A timed hold, and how it stopped.</summary>
/// <param name="HeldS">How long it was seen to last, more than 0.</param>
/// <param name="HasFallen">It ended then; otherwise it was still held when the watch stopped, so it lasted at least this long.</param>
/// <param name="Pupil">Whose it was, any number; none where each hold is somebody else's.</param>
public readonly record struct HoldTime(double HeldS, bool HasFallen, int? Pupil = null);
