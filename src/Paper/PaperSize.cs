namespace Slantwise.Paper;

/// <summary>The paper in the printer.</summary>
public enum PaperSize
{
    /// <summary>210 by 297 mm. Source: [ISO216] A series.</summary>
    A4 = 1,

    /// <summary>8.5 by 11 inches. Source: [ASMEY14] size A.</summary>
    Letter = 2,
}
