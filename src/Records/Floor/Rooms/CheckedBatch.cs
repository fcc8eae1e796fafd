using Slantwise.Records.Checks;
using Slantwise.Records.Entries;

namespace Slantwise.Records.Floor.Rooms;

/// <summary>A batch, sorted.</summary>
internal sealed class CheckedBatch
{
    /// <summary>Those to append, each id once, in the order given.</summary>
    public List<Entry> New { get; } = [];

    /// <summary>Those that are here already, or twice in the batch.</summary>
    public HashSet<Guid> TakenIds { get; } = [];

    /// <summary>Those that cannot be taken.</summary>
    public List<(Guid Id, Finding Finding)> Refused { get; } = [];

    /// <summary>The new ones by id, so that a later one may correct them.</summary>
    public Dictionary<Guid, KnownEntry> Own { get; } = [];

    /// <summary>Whether a level was chosen that was removed for the pupil: the teacher hears at once.</summary>
    public bool HasRemovedLevel { get; set; }
}
