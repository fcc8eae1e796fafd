namespace Slantwise.Desk.Pages.Sheets;

/// <summary>A pupil in the table of a reach.</summary>
/// <param name="PupilId">The pupil.</param>
/// <param name="Label">What to call the pupil.</param>
/// <param name="Tenths">For each level of the sheet how many of ten tries could succeed, from and to; none where it is not allowed.</param>
/// <param name="TrialCount">The pupil's tries behind it, over all tasks.</param>
/// <param name="IsMostlyAssumed">Whether more is assumed than seen.</param>
public sealed record ReachViewRow(Guid PupilId, string Label, IReadOnlyList<(int LowTenthsCount, int HighTenthsCount)?> Tenths, int TrialCount, bool IsMostlyAssumed);
