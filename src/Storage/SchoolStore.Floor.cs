using Microsoft.EntityFrameworkCore;
using Slantwise.Records.Floor;
using Slantwise.Storage.Model;

namespace Slantwise.Storage;

public abstract partial class SchoolStore
{
    /// <inheritdoc/>
    public Task<FloorLesson?> FindFloorLessonAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) =>
        FindAsync(c => c.FloorLessons.Where(f => f.SchoolId == schoolId && f.LessonId == lessonId), cancel);

    /// <inheritdoc/>
    public Task<FloorLesson?> FindFloorLessonByCodeAsync(Guid schoolId, string code, CancellationToken cancel = default) =>
        FindAsync(c => c.FloorLessons.Where(f => f.SchoolId == schoolId && f.Code == code), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson that is not here; a code another lesson of the school has.</exception>
    public Task SaveFloorLessonAsync(FloorLesson lesson, CancellationToken cancel = default) => SaveAsync(lesson, cancel);

    /// <inheritdoc/>
    public Task<IReadOnlyList<FloorDevice>> ListFloorDevicesAsync(Guid schoolId, Guid lessonId, CancellationToken cancel = default) => ListAsync(
        c => c.FloorDevices.Where(d => d.SchoolId == schoolId && d.LessonId == lessonId),
        devices => devices.OrderBy(d => d.Name, Names).ThenBy(d => d.DeviceId, StringComparer.Ordinal), cancel);

    /// <inheritdoc/>
    public Task<FloorDevice?> FindFloorDeviceAsync(Guid schoolId, Guid lessonId, string deviceId, CancellationToken cancel = default) =>
        FindAsync(c => c.FloorDevices.Where(d => d.SchoolId == schoolId && d.LessonId == lessonId && d.DeviceId == deviceId), cancel);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A lesson that was never opened for devices; a pupil, served now or before, who is not here or was erased.</exception>
    public Task SaveFloorDeviceAsync(FloorDevice device, CancellationToken cancel = default) => WriteAsync(async context =>
    {
        await HoldKnownPupilsAsync(context, device.SchoolId, device.PupilIds.Concat(device.ServedPupilIds), $"The device {device.DeviceId} names", nameof(device), cancel);
        await SaveAllAsync(context, [device], cancel);
        return true;
    }, cancel);

    private static async Task TakeOffDevicesAsync(SchoolContext context, Guid schoolId, Guid pupilId, CancellationToken cancel)
    {
        var devices = await context.FloorDevices.Where(d => d.SchoolId == schoolId).ToListAsync(cancel);
        var changed = devices
            .Where(d => d.PupilIds.Contains(pupilId) || d.ServedPupilIds.Contains(pupilId))
            .Select(d => d with { PupilIds = Without(d.PupilIds, pupilId), ServedPupilIds = Without(d.ServedPupilIds, pupilId) })
            .ToList();
        await SaveAllAsync(context, changed, cancel);
    }

    private static List<Guid> Without(IReadOnlyList<Guid> pupilIds, Guid pupilId) => [.. pupilIds.Where(id => id != pupilId)];
}
