namespace Slantwise.Engines.Marks;

/// <summary>Reads the marks of one form in a picture.</summary>
public static class FormReader
{
    /// <summary>Finds the form and reads every field.</summary>
    /// <param name="image">The picture, any orientation.</param>
    /// <param name="layout">The form.</param>
    /// <param name="code">Where its code was seen; none to find it by its black squares alone.</param>
    /// <returns>A reading in any case; with a fault where the form cannot be trusted.</returns>
    public static FormReading Read(GreyImage image, SheetLayout layout, CodeSighting? code) => new(PageFault.NotFound, [], null);
}
