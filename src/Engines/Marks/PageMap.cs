namespace Slantwise.Engines.Marks;

/// <summary>From a form's millimetres to a picture's pixels.</summary>
public abstract class PageMap
{
    /// <summary>Where a place of the form lies in the picture.</summary>
    /// <param name="xMm">To the right from the form's top left corner.</param>
    /// <param name="yMm">Down from it.</param>
    public abstract PixelPoint At(double xMm, double yMm);
}
