using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Sheets;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<IReadOnlyList<Sheet>> ListSheetsAsync(Guid schoolId, CancellationToken cancel = default) =>
        ListAsync(c => c.Sheets.Where(s => s.SchoolId == schoolId), sheets => sheets.OrderBy(s => s.Name, Names).ThenBy(s => s.Id), cancel);

    /// <inheritdoc/>
    public Task<Sheet?> FindSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default) =>
        FindAsync(c => c.Sheets.Where(s => s.SchoolId == schoolId && s.Id == sheetId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A school that is not here.</exception>
    // Only freezing counts versions: a new sheet has none, whatever the record says.
    public Task SaveSheetAsync(Sheet sheet, CancellationToken cancel = default) =>
        SaveAsync(sheet with { LatestVersion = 0 }, cancel, kept: "latest_version");

    /// <inheritdoc/>
    public Task<SheetVersion> FreezeSheetAsync(Guid schoolId, Guid sheetId, CancellationToken cancel = default) => WriteAsync(async context =>
    {
        await context.HoldAsync<Sheet>(schoolId, [sheetId], cancel);
        var sheet = await context.Sheets.FirstOrDefaultAsync(s => s.SchoolId == schoolId && s.Id == sheetId, cancel)
            ?? throw new InvalidOperationException($"The school has no sheet {sheetId}: it cannot be frozen.");
        var latest = await context.SheetVersions.FirstOrDefaultAsync(
            v => v.SchoolId == schoolId && v.SheetId == sheetId && v.Version == sheet.LatestVersion, cancel);
        // Both written anew: a version kept by an older program may lack what a newer one writes.
        if (latest is not null && JsonText.Write(latest.Content) == JsonText.Write(sheet.Draft)) return latest;

        var frozen = new SheetVersion
        {
            SchoolId = schoolId,
            SheetId = sheetId,
            Version = sheet.LatestVersion + 1,
            Content = sheet.Draft,
            FrozenAt = _clock.GetUtcNow(),
        };
        await using var writer = RowWriter<SheetVersion>.Adding(context);
        await writer.WriteAsync(frozen, cancel);
        await context.Sheets.Where(s => s.SchoolId == schoolId && s.Id == sheetId)
            .ExecuteUpdateAsync(set => set.SetProperty(s => s.LatestVersion, frozen.Version), cancel);
        return frozen;
    }, cancel);

    /// <inheritdoc/>
    public Task<SheetVersion?> FindSheetVersionAsync(Guid schoolId, Guid sheetId, int version, CancellationToken cancel = default) =>
        FindAsync(c => c.SheetVersions.Where(v => v.SchoolId == schoolId && v.SheetId == sheetId && v.Version == version), cancel);
}
