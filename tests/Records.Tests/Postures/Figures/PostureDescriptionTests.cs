using System.Globalization;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Records.Tests.Postures.Figures;

public sealed class PostureDescriptionTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    // Written by hand from looking at the figures.
    [Theory]
    [InlineData("two-feet", "On both feet; trunk upright; legs straight; arms by the sides.")]
    [InlineData("arabesque-hip", "On the right foot; trunk tipped forward; left leg raised behind to hip height; arms out to the sides.")]
    [InlineData("stork", "On the right foot; trunk upright; left foot at the other knee; arms out to the sides.")]
    [InlineData("squat", "On both feet; trunk tipped forward; knees deeply bent; arms stretched in front.")]
    [InlineData("lunge", "On the left foot and the toes of the right foot; trunk upright; left foot in front, right leg behind; knees bent; arms out to the sides.")]
    [InlineData("long-sit", "On the seat and both heels; trunk upright; legs straight; arms out to the sides.")]
    [InlineData("bench-leg-back", "On both hands, the right knee and the right instep; trunk level, chest down; left leg raised behind.")]
    [InlineData("side-support", "On the right hand, the right heel and the toes of the right foot; trunk tipped to the right; body in a straight line; left arm stretched up.")]
    [InlineData("v-sit-hands", "On the seat and both hands; trunk leaning back; legs straight and together, feet lifted.")]
    [InlineData("tuck-sit", "On the seat; trunk leaning back; legs tucked; hands at the knees.")]
    [InlineData("tripod", "On both hands and the crown of the head; upside down; legs tucked.")]
    [InlineData("handstand-wall", "On both hands; both heels against the wall; upside down; legs straight and together.")]
    [InlineData("shoulder-stand", "On the back of the shoulders and both elbows; upside down; legs straight and together.")]
    [InlineData("pair-bench-stand", "On both hands and both knees; trunk level, chest down. The second child: standing on both hips of the first; trunk upright; legs straight; arms out to the sides.")]
    [InlineData("pair-lean-out", "On both feet; trunk upright; legs straight; arms stretched in front. The second child: on both feet; holding both hands of the first; trunk upright; legs straight.")]
    public void Of_LookedAtPosture_SaysWhatIsSeen(string key, string expected) => Assert.Equal(expected, PostureDescription.Of(SamplePostures.Of(key), English));

    [Theory]
    [InlineData("tripod", "Apoyo en ambas manos y la coronilla; cabeza abajo; piernas recogidas.")]
    [InlineData("arabesque-hip", "Apoyo en el pie derecho; tronco inclinado hacia delante; pierna izquierda elevada detrás a la altura de la cadera; brazos abiertos a los lados.")]
    [InlineData("pair-lean-out", "Apoyo en ambos pies; tronco erguido; piernas rectas; brazos estirados delante. Segunda persona: apoyo en ambos pies; tomada de ambas manos con la primera; tronco erguido; piernas rectas.")]
    public void Of_LookedAtPostureInSpanish_SaysWhatIsSeen(string key, string expected) => Assert.Equal(expected, PostureDescription.Of(SamplePostures.Of(key), Spanish));

    [Fact]
    public void Of_EveryPostureOfTheLibrary_IsASentenceWithoutGaps() => Assert.All(PostureLibrary.All, posture => Assert.All([English, Spanish], culture =>
    {
        var text = PostureDescription.Of(posture.Settle(), culture);
        Assert.Matches(@"^\p{Lu}[^{}]*\.$", text);
        Assert.DoesNotContain("; ;", text);
        Assert.Equal(posture.Partner is null ? 1 : 2, text.Count(c => c == '.'));
        Assert.True(text.Length < (posture.Partner is null ? 200 : 400), text);
    }));
}
