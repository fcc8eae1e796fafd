using System.Globalization;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Floor;

/// <content>What a device is handed.</content>
public sealed partial class FloorRoom
{
    internal JoinAnswer Joined(string deviceId, string token)
    {
        lock (_lock)
        {
            var device = _devices[deviceId].Kept;
            var served = _devices.Values.Where(d => d.Kept.DeviceId != deviceId && d.Kept.LeftAt is null).SelectMany(d => d.Kept.PupilIds).ToHashSet();
            var record = _knowledge.Record;
            IReadOnlyList<PupilToPick> pupils = device.Kind is FloorDeviceKind.Teacher or FloorDeviceKind.Board
                ? []
                : [.. record.Pupils.Where(p => !_knowledge.FormerPupilIds.Contains(p.Id)).Select(p => new PupilToPick(p.Id, p.Label, served.Contains(p.Id)))];
            return new(token, device.SchoolId, device.LessonId, record.Lesson.Title, record.Class.Name, pupils, StateLocked(device));
        }
    }

    internal async Task<LessonBundle> BundleAsync(string deviceId, CultureInfo language, CancellationToken cancel)
    {
        var record = await LessonRecord.LoadAsync(_store, Lesson.SchoolId, Lesson.LessonId, cancel) ?? throw new FloorRefusal(FloorProblemKind.TokenInvalid);
        if (record.Sheet is null) throw new FloorRefusal(FloorProblemKind.LessonWithoutSheet);
        var device = FindDevice(deviceId)!;
        var served = device.PupilIds.Where(id => record.Pupils.Any(p => p.Id == id)).ToList();
        // Nobody was picked yet, or whoever was has left the class.
        if (served.Count == 0 && device.Kind is (FloorDeviceKind.Pupil or FloorDeviceKind.Pair)) throw new FloorRefusal(FloorProblemKind.PupilCount);
        return LessonBundles.Of(record, device.Kind, served, language);
    }
}
