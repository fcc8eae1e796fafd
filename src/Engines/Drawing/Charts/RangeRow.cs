namespace Slantwise.Engines.Drawing.Charts;

/// <summary>One row of a range chart.</summary>
/// <param name="Label">What the row is about, on one line; shortened where there is no room.</param>
/// <param name="ShareFraction">The share seen, 0 to 1; none where there is nothing to show.</param>
/// <param name="LowFraction">The lower end of its range, 0 to the share; none without a share.</param>
/// <param name="HighFraction">The upper end of its range, the share to 1; none without a share.</param>
/// <param name="CountText">What stands at the right: n, in words of the caller.</param>
/// <param name="IsMuted">Too few trials to read: drawn hollow.</param>
/// <param name="Note">What stands in place of a range that is not there ("not tried by anybody"); may be empty.</param>
public sealed record RangeRow(
    string Label, double? ShareFraction, double? LowFraction, double? HighFraction, string CountText, bool IsMuted, string Note = "");
