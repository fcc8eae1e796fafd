using Slantwise.Paper.Layout;
using Slantwise.Paper.Sheets.Sets;
using Slantwise.Records.Sheets;

namespace Slantwise.Paper.Sheets;

/// <summary>A task's sets: in columns where the page is wide enough, otherwise under one another.</summary>
internal static class SetBlocks
{
    public static IEnumerable<Block> Of(SheetContent content, SheetTask task, int taskNumber, IReadOnlyList<OfferedLevel> offered, SheetStyle style)
    {
        IReadOnlyList<SetPieces> Sets(SheetStyle own) =>
            [.. Enumerable.Range(1, content.SetCount).Select(set => SetPieces.Of(content, task, taskNumber, set, offered, own))];
        if (!style.IsStacked && new SetColumns(content, Sets(style), style) is { IsFitting: true } columns) return columns.Blocks();
        var stacked = style with { IsStacked = true };
        return new SetStack(content, Sets(stacked), stacked).Blocks();
    }
}
