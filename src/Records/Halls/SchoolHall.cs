namespace Slantwise.Records.Halls;

/// <summary>A hall or a yard: a rectangle with things in it.</summary>
public sealed record SchoolHall
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>Its id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>What it is called, 1 to 80 characters.</summary>
    public required string Name { get; init; }

    /// <summary>From the left wall to the right one, 2 to 200 metres.</summary>
    public required double WidthM { get; init; }

    /// <summary>From the front wall to the back one, 2 to 200 metres.</summary>
    public required double DepthM { get; init; }

    /// <summary>What stands in it, at most 40.</summary>
    public IReadOnlyList<HallThing> Things { get; init; } = [];
}
