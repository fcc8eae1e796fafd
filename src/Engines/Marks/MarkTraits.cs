namespace Slantwise.Engines.Marks;

/// <summary>What a field looks like, in numbers that do not depend on light, camera or print: what the chance of a mark is made from.</summary>
/// <remarks>Darkness is 0 for the paper around the field and 1 for solid print of the same page.</remarks>
/// <param name="Key">The field's key.</param>
/// <param name="InkFraction">The part of its inside that is ink: darker than 28 % of an outline on this page.</param>
/// <param name="MeanDarknessFraction">The mean darkness of its inside; a little below 0 is possible.</param>
/// <param name="UpperDarknessFraction">The darkness that 3 % of its inside exceed.</param>
/// <param name="PageOutlineFraction">The darkness of printed outlines on this page, the median of all fields: what is left of .3 mm of black.</param>
/// <param name="OutlineSeenFraction">The part of its own outline that can be seen.</param>
/// <param name="StrokeMm">The length of the longest connected piece of ink inside.</param>
/// <param name="SharpnessFraction">The steepest change of darkness over two thirds of a millimetre inside, against an outline's darkness: near 1 for strokes, low for smears and shadow.</param>
/// <param name="SpreadMm">How far ink lies from its own middle.</param>
/// <param name="AroundFraction">The part of sixteen directions in which ink lies just outside: 1 for a field with a circle around it.</param>
/// <param name="GroupFraction">Its ink against the most inked other field of its group, 0 to 1: .5 where both are the same, 1 where the other has none; 1 in no group.</param>
/// <param name="GrainFraction">How rough paper around it looks.</param>
/// <param name="WhiteFraction">Paper around it, 1 for white as white can be.</param>
/// <param name="PageContrastFraction">How much darker than paper solid print is on this page.</param>
/// <param name="PxPerMm">Pixels of the picture a millimetre of the form.</param>
/// <param name="NearestFraction">How near ink comes to the field's middle: 0 at it, 1 at the outline or with no ink. What pokes in from outside stays far from it.</param>
public sealed record MarkTraits(
    string Key, double InkFraction, double MeanDarknessFraction, double UpperDarknessFraction, double PageOutlineFraction, double OutlineSeenFraction,
    double StrokeMm, double SharpnessFraction, double SpreadMm, double AroundFraction, double GroupFraction, double GrainFraction, double WhiteFraction,
    double PageContrastFraction, double PxPerMm, double NearestFraction = 0);
