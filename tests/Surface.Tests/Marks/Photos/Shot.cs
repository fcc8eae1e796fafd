namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>How a picture is taken: what every fault changes, and the camera carries out.</summary>
internal sealed class Shot
{
    /// <summary>How far the camera leans over to the right and down.</summary>
    public double LeanXRad { get; set; }

    public double LeanYRad { get; set; }

    /// <summary>How the sheet lies in the picture.</summary>
    public double TurnRad { get; set; }

    /// <summary>From the camera to the middle of the sheet, in sheets' diagonals.</summary>
    public double DistanceFraction { get; set; } = 1.6;

    public double MegapixelCount { get; set; } = 3;

    /// <summary>How much of the picture's width or height the sheet takes; above 1 it is cut off.</summary>
    public double FillFraction { get; set; } = .92;

    /// <summary>Radial distortion at the picture's corner: above 0 a pincushion, below a barrel.</summary>
    public double LensFraction { get; set; }

    public List<Bend> Bends { get; } = [];

    public List<Shade> Shades { get; } = [];

    /// <summary>How much darker the darkest corner is than the lightest.</summary>
    public double FallFraction { get; set; }

    public double FallRad { get; set; }

    public double ExposureFraction { get; set; } = 1;

    /// <summary>What white light adds everywhere: a haze that takes contrast.</summary>
    public double HazeFraction { get; set; }

    public Table Table { get; set; } = Table.Dark;

    public double DefocusMm { get; set; }

    public double MotionMm { get; set; }

    public double MotionRad { get; set; }

    public double NoiseSd { get; set; } = 2;

    /// <summary>0 for a picture kept without loss.</summary>
    public int JpegQuality { get; set; } = 88;

    /// <summary>Black and white only, cut at this share of the paper's light; none for grey.</summary>
    public double? CutFraction { get; set; }
}
