namespace Slantwise.Engines.Drawing.Figures;

/// <summary>What is around the bodies: floor, wall, what carries, and the line of gravity. What is left out is not drawn.</summary>
public sealed record FigureStage
{
    /// <summary>The floor: 2 spots for a line seen from the side, 4 for a mat seen from above.</summary>
    public IReadOnlyList<Spot> Floor { get; init; } = [];

    /// <summary>The wall: 2 spots for a line seen from the side, foot first; 4 for a pane.</summary>
    public IReadOnlyList<Spot> Wall { get; init; } = [];

    /// <summary>Which way is behind a wall that is a line: −1 left, 1 right.</summary>
    public int BehindWall { get; init; } = 1;

    /// <summary>What carries: each 2 spots for a print seen from the side, more for an area.</summary>
    public IReadOnlyList<IReadOnlyList<Spot>> Contacts { get; init; } = [];

    /// <summary>The base: 2 spots for its extent, more for an area.</summary>
    public IReadOnlyList<Spot> Base { get; init; } = [];

    /// <summary>The line of gravity: the centre of mass and the point below it on the floor.</summary>
    public IReadOnlyList<Spot> Gravity { get; init; } = [];
}
