using Slantwise.Records.Scans;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A layout of another school; a school that is not here.</exception>
    public async Task KeepLayoutsAsync(Guid schoolId, IReadOnlyList<PrintedLayout> layouts, CancellationToken cancel = default)
    {
        if (layouts.FirstOrDefault(l => l.SchoolId != schoolId) is { } stranger)
            throw new ArgumentException($"The layout {stranger.Tag} belongs to another school than the one it is kept for. Nothing was saved.", nameof(layouts));
        if (layouts.Count == 0) return;
        await WriteAsync(async context =>
        {
            await using var writer = RowWriter<PrintedLayout>.Adding(context);
            foreach (var layout in layouts) await writer.WriteAsync(layout, cancel);
            return true;
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<PrintedLayout?> FindLayoutAsync(Guid schoolId, long tag, CancellationToken cancel = default) =>
        FindAsync(c => c.PrintedLayouts.Where(l => l.SchoolId == schoolId && l.Tag == tag), cancel);
}
