using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public async Task<IReadOnlyList<Scan>> ListScansAsync(Guid schoolId, Guid? lessonId, CancellationToken cancel = default)
    {
        var rows = await ListAsync(
            c => c.Scans.Where(s => s.SchoolId == schoolId && (lessonId == null || s.LessonId == lessonId)), scans => scans.OrderBy(s => s.ReadAt).ThenBy(s => s.Id), cancel);
        return [.. rows.Select(ScanRow.ScanOf)];
    }

    /// <inheritdoc/>
    public async Task<Scan?> FindScanAsync(Guid schoolId, Guid scanId, CancellationToken cancel = default) =>
        await FindAsync(c => c.Scans.Where(s => s.SchoolId == schoolId && s.Id == scanId), cancel) is { } row ? ScanRow.ScanOf(row) : null;

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson or a pupil that is not here; a picture of another scan or school.</exception>
    public async Task SaveScanAsync(ScanSave save, CancellationToken cancel = default)
    {
        var scan = save.Scan;
        if (save.Pictures.Any(p => p.SchoolId != scan.SchoolId || p.ScanId != scan.Id) || save.Kept.Any(p => p.SchoolId != scan.SchoolId))
            throw new ArgumentException("A picture belongs to another scan or school than the one saved. Nothing was saved.", nameof(save));
        await WriteAsync(async context =>
        {
            await SaveAllAsync(context, [ScanRow.Of(scan)], cancel);
            if (save.ForgetsPictures)
                await context.ScanPictures.Where(p => p.SchoolId == scan.SchoolId && p.ScanId == scan.Id).ExecuteDeleteAsync(cancel);
            await SaveAllAsync(context, save.Pictures, cancel);
            await SaveAllAsync(context, save.Kept, cancel);
            return true;
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<ScanPicture>> ListScanPicturesAsync(Guid schoolId, Guid scanId, CancellationToken cancel = default) => ListAsync(
        c => c.ScanPictures.Where(p => p.SchoolId == schoolId && p.ScanId == scanId), all => all.OrderBy(p => p.PictureKey, StringComparer.Ordinal), cancel);

    /// <inheritdoc/>
    public async Task<byte[]?> FindScanPictureAsync(Guid schoolId, Guid scanId, string pictureKey, CancellationToken cancel = default) =>
        (await FindAsync(c => c.ScanPictures.Where(p => p.SchoolId == schoolId && p.ScanId == scanId && p.PictureKey == pictureKey), cancel))?.Bytes;

    /// <inheritdoc/>
    public Task<IReadOnlyList<PictureKey>> ListPicturesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => ListAsync(
        c => c.Pictures.Where(p => p.SchoolId == schoolId && p.LessonId == lessonId).Select(p => new PictureKey(p.LessonId, p.PupilId, p.FieldKey)),
        all => all.OrderBy(p => p.PupilId).ThenBy(p => p.FieldKey, StringComparer.Ordinal), cancel);

    /// <inheritdoc/>
    public async Task<byte[]?> FindPictureAsync(Guid schoolId, PictureKey key, CancellationToken cancel = default) => (await FindAsync(
        c => c.Pictures.Where(p => p.SchoolId == schoolId && p.LessonId == key.LessonId && p.PupilId == key.PupilId && p.FieldKey == key.FieldKey), cancel))?.Bytes;

    /// <inheritdoc/>
    public async Task RemovePicturesAsync(Guid schoolId, Guid lessonId, Guid pupilId, CancellationToken cancel = default)
    {
        await WriteAsync(
            context => context.Pictures.Where(p => p.SchoolId == schoolId && p.LessonId == lessonId && p.PupilId == pupilId).ExecuteDeleteAsync(cancel), cancel);
        await ForgetErasedAsync(cancel);
    }

    // A teacher's observation sheet is about several pupils: the erased one's row goes, and with it the page's picture, which shows all rows.
    private static async Task EraseScansAsync(SchoolContext context, Guid schoolId, Guid pupilId, CancellationToken cancel)
    {
        var own = context.Scans.Where(s => s.SchoolId == schoolId && s.PupilId == pupilId).Select(s => s.Id);
        await context.ScanPictures.Where(p => p.SchoolId == schoolId && own.Contains(p.ScanId)).ExecuteDeleteAsync(cancel);
        await context.Scans.Where(s => s.SchoolId == schoolId && s.PupilId == pupilId).ExecuteDeleteAsync(cancel);
        await context.Pictures.Where(p => p.SchoolId == schoolId && p.PupilId == pupilId).ExecuteDeleteAsync(cancel);
        foreach (var row in await context.Scans.Where(s => s.SchoolId == schoolId && s.PupilId == null).ToListAsync(cancel))
        {
            var scan = ScanRow.ScanOf(row);
            if (!scan.RowPupils.Contains(pupilId)) continue;
            var gone = scan.Items.Where(i => IsOf(i, scan, pupilId)).SelectMany(i => new[] { i.Key, ScanPicture.RowOf(i.Key) }).Append(ScanPicture.Photo).ToList();
            await context.ScanPictures.Where(p => p.SchoolId == schoolId && p.ScanId == scan.Id && gone.Contains(p.PictureKey)).ExecuteDeleteAsync(cancel);
            var left = scan with
            {
                Items = [.. scan.Items.Where(i => !IsOf(i, scan, pupilId))],
                RowPupils = [.. scan.RowPupils.Select(id => id == pupilId ? Guid.Empty : id)],
            };
            await SaveAllAsync(context, [ScanRow.Of(left)], cancel);
        }
    }

    private static bool IsOf(ScanItem item, Scan scan, Guid pupilId) => item.Question is { Kind: SheetFieldKind.TeacherMet or SheetFieldKind.TeacherSet, SetNumber: var row }
        && row >= 1 && row <= scan.RowPupils.Count && scan.RowPupils[row - 1] == pupilId;
}
