namespace Slantwise.Records.Entries;

/// <summary>One fact from a lesson. Entries are appended and never changed: a correction supersedes.</summary>
public sealed record Entry
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>A UUIDv7 made where the entry was made, so that taking it twice changes nothing.</summary>
    public required Guid Id { get; init; }

    /// <summary>The lesson it belongs to.</summary>
    public required Guid LessonId { get; init; }

    /// <summary>The pupil it is about; none for a fact about the whole lesson.</summary>
    public Guid? PupilId { get; init; }

    /// <summary>The task of the lesson's sheet it is about; none where no task is meant.</summary>
    public Guid? TaskId { get; init; }

    /// <summary>The set, from 1; none where no set is meant.</summary>
    public int? SetNumber { get; init; }

    /// <summary>The trial within the set, from 1; none for anything but a trial or a check of one.</summary>
    public int? TrialNumber { get; init; }

    /// <summary>What happened.</summary>
    public required EntryFact Fact { get; init; }

    /// <summary>Where it came from.</summary>
    public required EntrySource Source { get; init; }

    /// <summary>The device that made it, a short text it keeps.</summary>
    public required string DeviceId { get; init; }

    /// <summary>The device's own running number, from 1: clocks may be wrong, this is not.</summary>
    public required long DeviceSequence { get; init; }

    /// <summary>When it was made by the device's clock, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The entry this one corrects; none for a first word.</summary>
    public Guid? SupersedesId { get; init; }

    /// <summary>When the store received it, UTC; the store sets it, none before.</summary>
    public DateTimeOffset? ReceivedAt { get; init; }
}
