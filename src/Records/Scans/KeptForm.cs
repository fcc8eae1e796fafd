using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans;

/// <summary>What is kept of a printed form.</summary>
/// <param name="Layout">Where its marks are, rounded to 0.01 mm.</param>
/// <param name="RowTags">
/// On an observation sheet the pupil of each row, from the first, by <see cref="SheetCode.TagOf(Guid)"/>; empty on a pupil's sheet, whose code names the pupil.
/// </param>
public sealed record KeptForm(SheetLayout Layout, IReadOnlyList<long> RowTags);
