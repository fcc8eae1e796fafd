using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>The picture of a page while it is being taken in: what is kept of it is cut here.</summary>
public abstract class PagePicture
{
    /// <summary>A tag of the bytes it came from, so that the same picture is known when it comes again.</summary>
    public abstract long Tag { get; }

    /// <summary>The whole page as a JPEG in grey, upright, without anything a camera wrote beside it.</summary>
    public abstract byte[] Photo();

    /// <summary>A piece of a form as a PNG in grey, made upright.</summary>
    /// <param name="map">Where the form lies.</param>
    /// <param name="area">The piece, in the form's millimetres; what lies outside the picture comes out white.</param>
    public abstract byte[] Crop(PageMap map, FormArea area);

    /// <summary>How much of a piece is darker than its paper, 0 to 1, lines to write on left out: whether something is written there.</summary>
    /// <param name="map">Where the form lies.</param>
    /// <param name="area">The piece, in the form's millimetres.</param>
    public abstract double InkFraction(PageMap map, FormArea area);
}
