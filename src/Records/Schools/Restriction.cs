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

    /// <summary>The restriction once it is lifted: it ends the day before, so that earlier lessons are read as they were taught.</summary>
    /// <param name="day">The first day without it.</param>
    /// <returns>None where it would never have held.</returns>
    public Restriction? LiftedOn(DateOnly day) => Since >= day ? null : this with { Until = day.AddDays(-1), IsLiftedByHand = false };
}
