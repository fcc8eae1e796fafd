using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Records.Floor;

/// <summary>What is new for a device that listens.</summary>
/// <param name="State">How lesson and device stand; none where that is as it was told last.</param>
/// <param name="News">For a teacher's device; none where there is nothing.</param>
public sealed record FloorNews(FloorState? State, TeacherNews? News)
{
    /// <summary>Whether there is nothing to tell.</summary>
    public bool IsEmpty => State is null && News is null;
}
