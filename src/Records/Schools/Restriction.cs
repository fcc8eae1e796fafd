namespace Slantwise.Records.Schools;

/// <summary>A demand a pupil may not meet, until a date or until it is lifted. Never a reason, never a diagnosis.</summary>
public sealed record Restriction
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>The restriction's id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The pupil it protects.</summary>
    public required Guid PupilId { get; init; }

    /// <summary>The demand that is ruled out.</summary>
    public required BodyDemand Without { get; init; }

    /// <summary>The first day it holds; none when it holds for earlier lessons as well.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>The last day it holds; none when it holds until it is lifted.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>Whether it goes on after <see cref="Until"/> until somebody lifts it: the day is then the earliest for that, a gate and not an end.</summary>
    public bool IsLiftedByHand { get; init; }

    /// <summary>Whether it holds on the given day.</summary>
    /// <param name="day">The day of the lesson, in the school's calendar.</param>
    public bool HoldsOn(DateOnly day) => !(day < Since) && (IsLiftedByHand || !(day > Until));
}
