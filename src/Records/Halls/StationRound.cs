namespace Slantwise.Records.Halls;

/// <summary>A round of a rotation.</summary>
/// <param name="StartMin">When it begins, in minutes from the begin of the lesson.</param>
/// <param name="EndMin">When it ends.</param>
/// <param name="Stations">The station of each group, from 0, in the order of the groups.</param>
/// <param name="IsInterrupted">Whether something else than practice comes in between.</param>
/// <param name="IsLate">Whether it ends after the last phase of practice.</param>
public sealed record StationRound(int StartMin, int EndMin, IReadOnlyList<int> Stations, bool IsInterrupted, bool IsLate);
