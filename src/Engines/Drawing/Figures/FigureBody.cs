namespace Slantwise.Engines.Drawing.Figures;

/// <summary>One body as it is seen, in plain numbers.</summary>
/// <param name="Shorts">The lower trunk in slices: crotch and hips, 2 balls each, left and right, then the flat waistband, 2 balls or more.</param>
/// <param name="Shirt">The rest of the trunk from the waist up to the neck in slices of 2 balls, 3 slices or more; the one before the last is at the shoulders.</param>
/// <param name="Head">Head and neck.</param>
/// <param name="Limbs">Any number, usually two arms and two legs.</param>
/// <param name="Kit">0 for the first body, 1 for the partner: which shirt it wears.</param>
public sealed record FigureBody(
    IReadOnlyList<IReadOnlyList<Round>> Shorts, IReadOnlyList<IReadOnlyList<Round>> Shirt, FigureHead Head, IReadOnlyList<FigureLimb> Limbs, int Kit);
