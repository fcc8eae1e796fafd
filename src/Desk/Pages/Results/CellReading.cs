namespace Slantwise.Desk.Pages.Results;

/// <summary>What a typed text means: changes to make, or a remark and no change.</summary>
/// <param name="Changes">In the order of the sheet; empty where there is a remark.</param>
/// <param name="Remark">Why the text cannot be taken; none where it can.</param>
public sealed record CellReading(IReadOnlyList<SlotChange> Changes, CellRemark? Remark = null)
{
    /// <summary>A text that cannot be taken.</summary>
    public static CellReading Refused(string key, params object[] arguments) => new([], new CellRemark(key, arguments));
}
