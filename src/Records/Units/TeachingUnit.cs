namespace Slantwise.Records.Units;

/// <summary>A unit: a sequence of lessons of one class.</summary>
public sealed record TeachingUnit
{
    /// <summary>The owning school.</summary>
    public required Guid SchoolId { get; init; }

    /// <summary>Its id within the school.</summary>
    public required Guid Id { get; init; }

    /// <summary>The class taught.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>What it is called, 1 to 80 characters.</summary>
    public required string Name { get; init; }

    /// <summary>The first day it is planned for; none where it is not yet.</summary>
    public DateOnly? FirstDay { get; init; }

    /// <summary>What it is made of.</summary>
    public required UnitContent Content { get; init; }
}
