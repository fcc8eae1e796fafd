namespace Slantwise.Engines.Drawing.Figures;

/// <summary>The tones of one body: paper-white skin, a shirt, shorts, hair.</summary>
internal sealed record FigureKit(Tone Shirt, Tone Shorts)
{
    public const Tone Skin = Tone.Ground;
    public const Tone FarSkin = Tone.AccentSoft;
    public const Tone Hair = Tone.Ink;

    public static FigureKit Of(int kit) => kit == 0 ? new(Tone.AccentMiddle, Tone.Muted) : new(Tone.Muted, Tone.SecondMiddle);
}
