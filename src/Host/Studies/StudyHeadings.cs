namespace Slantwise.Host.Studies;

/// <summary>How the columns may be headed, without case, accents and punctuation; the first name is the one that is said.</summary>
internal static class StudyHeadings
{
    private static readonly Dictionary<StudyColumn, string[]> Names = new()
    {
        [StudyColumn.Pupil] = ["pupil", "student", "person", "alumno", "alumna", "estudiante"],
        [StudyColumn.Level] = ["level", "item", "nivel"],
        [StudyColumn.Task] = ["task", "tarea"],
        [StudyColumn.Dose] = ["dose", "dosis"],
        [StudyColumn.Measure] = ["measure", "medida"],
        [StudyColumn.Order] = ["order", "orden"],
        [StudyColumn.OrderLogits] = ["order_logits", "orden_logits"],
        [StudyColumn.Lesson] = ["lesson", "session", "leccion", "sesion", "clase"],
        [StudyColumn.Success] = ["success", "exito"],
        [StudyColumn.Trials] = ["trials", "n", "intentos"],
        [StudyColumn.HeldS] = ["held_s", "held", "aguante_s", "aguante"],
        [StudyColumn.Predicted] = ["predicted", "prediction", "predicho", "prediccion"],
        [StudyColumn.Unit] = ["unit", "subject", "unidad"],
        [StudyColumn.Rater] = ["rater", "judge", "juez", "jueza"],
        [StudyColumn.Value] = ["value", "rating", "valor"],
        [StudyColumn.Time] = ["time", "time_s", "tiempo", "tiempo_s"],
        [StudyColumn.Event] = ["event", "evento"],
        [StudyColumn.Group] = ["group", "grupo"],
        [StudyColumn.Outcome] = ["outcome", "resultado"],
        [StudyColumn.Successes] = ["successes", "exitos", "aciertos"],
    };

    /// <summary>The name that is said of a column.</summary>
    public static string Of(StudyColumn column) => Names[column][0];

    /// <summary>Headings and what they mean, for a table that may have some columns.</summary>
    public static IReadOnlyDictionary<string, StudyColumn> Known(IEnumerable<StudyColumn> columns) =>
        columns.SelectMany(c => Names[c], (column, name) => (Name: name.Replace("_", ""), column)).ToDictionary(n => n.Name, n => n.column);
}
