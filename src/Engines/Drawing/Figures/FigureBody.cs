namespace Slantwise.Engines.Drawing.Figures;

/// <summary>One body as it is seen, in plain numbers.</summary>
/// <param name="Shorts">The lower trunk from the crotch up to the hem of the shirt: slices of 2 balls, side by side.</param>
/// <param name="Shirt">The rest of the trunk up to the neck, likewise, 2 slices or more.</param>
/// <param name="Head">Head and neck.</param>
/// <param name="Limbs">Any number, usually two arms and two legs.</param>
/// <param name="Kit">0 for the first body, 1 for the partner: which shirt it wears.</param>
public sealed record FigureBody(
    IReadOnlyList<IReadOnlyList<Round>> Shorts, IReadOnlyList<IReadOnlyList<Round>> Shirt, FigureHead Head, IReadOnlyList<FigureLimb> Limbs, int Kit);
