using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>What the reader of a page has to know beforehand.</summary>
/// <param name="SchoolId">The school whose codes are taken.</param>
/// <param name="LayoutOf">The form of a layout's tag; none where no such form was printed.</param>
public sealed record ExpectedForms(Guid SchoolId, Func<long, CancellationToken, Task<SheetLayout?>> LayoutOf)
{
    /// <summary>Forms to try on a page without a readable code, the likeliest first. Empty to try none.</summary>
    public IReadOnlyList<KnownForm> WithoutCode { get; init; } = [];

    /// <summary>The pages of the file to read, from 1; none for all.</summary>
    public IReadOnlySet<int>? PageNumbers { get; init; }
}
