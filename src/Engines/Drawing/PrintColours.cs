namespace Slantwise.Engines.Drawing;

/// <summary>The tones as they are printed. Each stays apart from its neighbours when a printer makes grey of it.</summary>
/// <remarks>
/// Text tones (ink, muted, accent, second, caution) have a contrast of more than 7 to 1 on white paper, the faint one of more than 3 to 1.
/// Source: [WCAG22] success criteria 1.4.3, 1.4.6 and 1.4.11, for the ratios.
/// </remarks>
public static class PrintColours
{
    /// <summary>A tone's colour on paper.</summary>
    /// <param name="tone">Any tone.</param>
    /// <returns>Red, green and blue as <c>#rrggbb</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number that is no tone.</exception>
    public static string HexOf(Tone tone) => tone switch
    {
        Tone.Ink => "#15181b",
        Tone.Muted => "#4b5257",
        Tone.Faint => "#8b9196",
        Tone.Ground => "#ffffff",
        Tone.Accent => "#0d4f5c",
        Tone.AccentSoft => "#e2eef0",
        Tone.AccentMiddle => "#a9ccd1",
        Tone.Second => "#7a3e00",
        Tone.SecondSoft => "#f6e9d9",
        Tone.SecondMiddle => "#e3c49b",
        Tone.Caution => "#8c1d18",
        Tone.Cream => "#fdf6e3",
        _ => throw new ArgumentOutOfRangeException(nameof(tone), tone, "A tone is one of the named ones."),
    };
}
