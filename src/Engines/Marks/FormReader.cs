namespace Slantwise.Engines.Marks;

/// <summary>Reads the marks of one form in a picture.</summary>
public static class FormReader
{
    /// <summary>Finds the form and reads every field.</summary>
    /// <param name="image">The picture, any orientation.</param>
    /// <param name="layout">The form.</param>
    /// <param name="code">Where its code was seen; none to find it by its black squares alone.</param>
    /// <returns>A reading in any case; with a fault where the form cannot be trusted.</returns>
    /// <exception cref="ArgumentException">A picture without pixels or with fewer values than pixels; a form with fewer than four black squares.</exception>
    public static FormReading Read(GreyImage image, SheetLayout layout, CodeSighting? code) => Read(image, layout, code, MarkModel.Fitted);

    /// <summary>The same with another model of marks.</summary>
    /// <param name="image">The picture, any orientation.</param>
    /// <param name="layout">The form.</param>
    /// <param name="code">Where its code was seen; none to find it by its black squares alone.</param>
    /// <param name="model">What turns traits into chances.</param>
    /// <exception cref="ArgumentException">A picture without pixels or with fewer values than pixels; a form with fewer than four black squares.</exception>
    public static FormReading Read(GreyImage image, SheetLayout layout, CodeSighting? code, MarkModel model)
    {
        var traits = Traits(image, layout, code);
        return new(traits.Fault, [.. traits.Fields.Select(model.Read)], traits.Map);
    }

    /// <summary>Finds the form and takes every field's traits, without deciding anything.</summary>
    /// <param name="image">The picture, any orientation.</param>
    /// <param name="layout">The form.</param>
    /// <param name="code">Where its code was seen; none to find it by its black squares alone.</param>
    /// <exception cref="ArgumentException">A picture without pixels or with fewer values than pixels; a form with fewer than four black squares.</exception>
    public static FormTraits Traits(GreyImage image, SheetLayout layout, CodeSighting? code)
    {
        if (image.WidthPx < 1 || image.HeightPx < 1 || image.Values.Length < (long)image.WidthPx * image.HeightPx)
            throw new ArgumentException($"A picture of {image.WidthPx} × {image.HeightPx} pixels has {image.Values.Length} values.", nameof(image));
        if (layout.Anchors.Count < 4) throw new ArgumentException($"A form has at least four black squares, not {layout.Anchors.Count}.", nameof(layout));
        var (fault, place) = new FormFinder(layout, image, code).Find();
        return fault == PageFault.None ? new(fault, TraitsReader.Of(layout, place!), place!.Map) : new(fault, [], place?.Map);
    }
}
