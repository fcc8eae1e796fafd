namespace Slantwise.Engines.Drawing.Charts;

/// <summary>A pupil in a reach chart: a bar over what is within reach, and how far it could be off.</summary>
/// <param name="Label">What to call the pupil, on one line; shortened where there is no room.</param>
/// <param name="Span">What is within reach; none where there is nothing to show.</param>
/// <param name="OffLogits">How far the whole bar could lie to either side, 0 or more.</param>
/// <param name="IsMuted">Mostly assumed: hollow, with a dashed range.</param>
/// <param name="BarredLines">Places of lines, from 0, that are not for this pupil: crossed out in the row.</param>
/// <param name="Note">What stands in place of a bar that is not there; may be empty.</param>
public sealed record ReachRow(string Label, ReachSpan? Span, double OffLogits, bool IsMuted, IReadOnlyList<int> BarredLines, string Note = "");
