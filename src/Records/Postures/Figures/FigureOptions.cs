namespace Slantwise.Records.Postures.Figures;

/// <summary>How a figure is to be drawn.</summary>
/// <param name="View">From where.</param>
/// <param name="WidthMm">Width of the box that holds all of it, 5 or more.</param>
/// <param name="HeightMm">Height of the box, 5 or more.</param>
public sealed record FigureOptions(FigureView View, double WidthMm, double HeightMm)
{
    /// <summary>Whether the base of support is shown: an area seen from above, else its extent below the floor.</summary>
    public bool ShowsBase { get; init; }

    /// <summary>Whether the centre of mass and the line down from it are shown.</summary>
    public bool ShowsGravity { get; init; }

    /// <summary>Whether what carries is marked on the floor.</summary>
    public bool ShowsContacts { get; init; }

    /// <summary>Whether floor and wall are shown.</summary>
    public bool ShowsFloor { get; init; } = true;

    /// <summary>The scale of a sheet on which all figures are one size, in millimetres for one stature; none to fill the box. A figure that would not fit is drawn smaller.</summary>
    public double? StatureMm { get; init; }

    /// <summary>The frame of an earlier drawing to stay in, so that a figure keeps its place while it is dragged; none to place it anew. It may then leave the box.</summary>
    public FigureFrame? Frame { get; init; }
}
