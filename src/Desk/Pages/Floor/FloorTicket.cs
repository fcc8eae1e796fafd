using Slantwise.Records.Floor;

namespace Slantwise.Desk.Pages.Floor;

/// <summary>What a ticket says: it joins one device after the other to this lesson, as this and nothing else.</summary>
/// <param name="SchoolId">The owning school.</param>
/// <param name="LessonId">The lesson.</param>
/// <param name="Kind">What the device may be.</param>
public sealed record FloorTicket(Guid SchoolId, Guid LessonId, FloorDeviceKind Kind);
