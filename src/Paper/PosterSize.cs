namespace Slantwise.Paper;

/// <summary>How large wall posters are.</summary>
public enum PosterSize
{
    /// <summary>One page of the paper in the printer, lying.</summary>
    OnePage = 1,

    /// <summary>Two pages hung side by side: A3 from two of A4. Nothing stands across the joint.</summary>
    TwoPages = 2,

    /// <summary>The same as one page of twice the size, A3 or Tabloid, for a printer that takes it.</summary>
    Double = 3,
}
