using System.Globalization;
using Slantwise.Paper;
using Slantwise.Records.Lessons;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;

namespace Slantwise.Surface.Tests.Paper.Cards;

/// <summary>Lessons whose words are as long as a sheet may hold, and one as a teacher would write it.</summary>
internal static class CardLessons
{
    public static readonly PaperOptions English = new(PaperSize.A4, CultureInfo.GetCultureInfo("en"));

    public static readonly PaperOptions Spanish = new(PaperSize.A4, CultureInfo.GetCultureInfo("es"));

    /// <summary>A task as a teacher would write it, its levels with figures.</summary>
    public static readonly SheetTask Figures = Posed(PaperLessons.OneFoot, "one-foot-arms-out", "stork-hands-on-hips", "tiptoe-one-foot", "arabesque-low");

    // Five cues of nine words, six levels, each near the length a name may have.
    private static readonly string[] Cues =
    [
        "Mantén los hombros exactamente encima de las muñecas siempre",
        "Siente repartido el peso entre las tres superficies apoyadas",
        "Aprieta fuertemente abdominales, glúteos y cuádriceps mientras mantienes equilibrio",
        "Mira tranquilamente un punto fijo situado delante del cuerpo",
        "Baja lentamente controlando cada articulación hasta quedar completamente quieto",
    ];

    private static readonly string[] Names =
    [
        "Con ambas manos separadas y rodillas apoyadas sobre colchonetas dobladas", "Apoyando únicamente antebrazos y puntas de los pies descalzos",
        "Manteniendo simultáneamente levantadas pierna derecha y mano contraria", "Con los ojos cerrados y acompañamiento de una persona compañera",
        "Desplazando progresivamente el centro de gravedad hacia delante", "Alternando apoyos izquierdos y derechos sin interrumpir el equilibrio",
    ];

    /// <summary>Three tasks of six levels and five cues of nine words, in Spanish.</summary>
    public static SheetContent Long(bool hasFigures) => new()
    {
        Title = "Equilibrios estáticos",
        Tasks = [.. Enumerable.Range(1, 3).Select(i => LongTask(i, hasFigures))],
        SetCount = 4,
        TrialCount = 10,
    };

    /// <summary>The long lesson with long phases, a long class name and a long title.</summary>
    public static LessonRecord LongLesson(bool hasFigures = true)
    {
        var record = PaperLessons.Of(28, Long(hasFigures));
        return record with
        {
            Class = record.Class with { Name = "Sexto de primaria, grupo de refuerzo de los martes y jueves" },
            Lesson = record.Lesson with
            {
                Title = "Equilibrios estáticos con apoyos variados y cambios de apoyo controlados",
                MatCount = 14,
                Phases = [.. Enumerable.Range(0, 9).Select(i => new LessonPhase((PhaseKind)(i % 5 + 1), 3 + i, $"Fase {i + 1}: explicar, colocar colchonetas, repartir hojas y recordar la señal de parar antes de seguir"))],
            },
        };
    }

    /// <summary>A short lesson with phases, mats and figures.</summary>
    public static LessonRecord ShortLesson()
    {
        var record = PaperLessons.Of(3, Figures);
        return record with
        {
            Lesson = record.Lesson with
            {
                MatCount = 8,
                Phases = [new(PhaseKind.Management, 5, "Register"), new(PhaseKind.Instruction, 5, "Every level shown once"), new(PhaseKind.Activity, 25, ""), new(PhaseKind.Instruction, 5, "")],
            },
        };
    }

    public static SheetTask Posed(SheetTask task, params string[] postures) =>
        task with { Levels = [.. task.Levels.Select((level, i) => level with { Posture = postures[i % postures.Length] })] };

    private static SheetTask LongTask(int number, bool hasFigures)
    {
        var task = PaperLessons.Task(
            number * 100, $"Equilibrio extraordinariamente complicado número {number} sobre apoyos reducidos",
            "Descubre con cuántas superficies diferentes consigues permanecer completamente inmóvil durante varios segundos seguidos sin ayuda.", Cues,
            "Trabaja únicamente sobre la colchoneta, mantén la cabeza alejada del suelo y detente inmediatamente cuando oigas la señal acordada.",
            [.. Names.Select((name, i) => (name, new Dose(i % 2 == 0 ? DoseKind.HoldS : DoseKind.RepetitionsCount, 10 + i), Array.Empty<Records.Schools.BodyDemand>()))]);
        return hasFigures ? Posed(task, "side-support-star", "arabesque-half", "v-sit", "bench", "front-support", "stork") : task;
    }
}
