using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Records.Lessons;
using static Slantwise.Desk.Words.FloorWords;

namespace Slantwise.Desk.Pages.Floor;

/// <summary>What the page of a lesson on tablets says about devices.</summary>
public static class FloorText
{
    // A device speaks at least every 15 seconds; one that was missed twice is away.
    private static readonly TimeSpan Here = TimeSpan.FromSeconds(40);

    /// <summary>What a device is called; one that has its number only is called by that.</summary>
    /// <param name="device">The device.</param>
    public static string Name(DeviceSeen device) => device.Name.All(char.IsAsciiDigit) ? Say("DeviceNumber", device.Name) : device.Name;

    /// <summary>When a device last spoke, in words.</summary>
    /// <param name="device">The device.</param>
    /// <param name="now">The time now, UTC.</param>
    public static string Seen(DeviceSeen device, DateTimeOffset now)
    {
        if (device.HasLeft) return Say("SeenLeft");
        if (device.SeenAt is not { } seen) return Say("SeenNever");
        var ago = now - seen;
        return ago < Here ? Say("SeenNow") : SayCount("SeenMinutes", Math.Max(1, (int)Math.Round(ago.TotalMinutes)));
    }

    /// <summary>Whom a device serves, in words.</summary>
    /// <param name="device">The device.</param>
    /// <param name="record">The lesson.</param>
    public static string Serves(DeviceSeen device, LessonRecord record) => device.Kind switch
    {
        FloorDeviceKind.Station => Say("ServesClass"),
        FloorDeviceKind.Teacher or FloorDeviceKind.Board => "–",
        _ when device.PupilIds.Count == 0 => Say("ServesNobody"),
        // A pupil who was erased or has changed class since has no name here any more.
        _ => string.Join(", ", device.PupilIds.Select(id => record.Pupils.FirstOrDefault(p => p.Id == id)?.Label ?? Say("ServesUnknown"))),
    };

    /// <summary>The devices that still hold entries, and how many, as a sentence; none where there is nothing unsent.</summary>
    /// <param name="devices">The lesson's devices.</param>
    public static string? Unsent(IReadOnlyList<DeviceSeen> devices)
    {
        var holding = devices.Where(d => d.UnsentCount > 0).ToList();
        return holding.Count == 0 ? null : SayCount("StillUnsent", holding.Sum(d => d.UnsentCount), string.Join(", ", holding.Select(d => Say("UnsentOn", Name(d), d.UnsentCount))));
    }

    /// <summary>Why the floor did not do what was asked, as a sentence.</summary>
    /// <param name="kind">Why.</param>
    public static string Refused(FloorProblemKind kind) => kind switch
    {
        FloorProblemKind.LessonWithoutSheet => Say("RefusedLessonWithoutSheet"),
        FloorProblemKind.LessonClosed => Say("RefusedLessonClosed"),
        FloorProblemKind.LessonFull => Say("RefusedLessonFull"),
        FloorProblemKind.NameLength => Say("RefusedNameLength"),
        FloorProblemKind.Busy => Say("RefusedBusy"),
        // The others are about joining and delivering, which no page does.
        _ => Say("RefusedOther"),
    };
}
