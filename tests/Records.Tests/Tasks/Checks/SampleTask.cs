namespace Slantwise.Records.Tests.Tasks.Checks;

/// <summary>A task as one file that the checker has nothing to say about, to be spoilt part by part.</summary>
internal static class SampleTask
{
    public const string Id = "019ba208-1f93-712e-b81b-3949d4320aeb";

    public const string Text = """
        {
          "format": "slantwise-task/2",
          "id": "019ba208-1f93-712e-b81b-3949d4320aeb",
          "pattern": "staticBalance",
          "supports": ["hand", "foot"],
          "mats": { "count": 1, "per": "pupil" },
          "space": { "metres": 1, "source": "commonPractice" },
          "prerequisites": [],
          "factors": [
            { "key": "slope", "kind": "intrinsic", "role": "key", "range": ["wall", "bench", "floor"] },
            { "key": "width", "kind": "intrinsic", "role": "supporting", "unit": "m", "range": [0.6, 0.4] },
            { "key": "holdS", "kind": "external", "role": "supporting", "range": [3, 5, 10] }
          ],
          "levels": [
            { "id": "019ba208-1f94-745b-9a9f-2edc0b9ca147", "dose": {"holdS": 5}, "at": {"slope": "wall", "width": 0.6}, "demands": [] },
            { "id": "019ba208-1f95-7ccf-8aad-f0ce48ea4781", "dose": {"holdS": 5}, "at": {"slope": "bench", "width": 0.6}, "demands": ["handWeight"] },
            { "id": "019ba208-1f96-760a-9a14-b1b5d5032231", "dose": {"holdS": 5}, "at": {"slope": "floor", "width": 0.6}, "demands": ["handWeight"], "posture": "front-support" },
            { "id": "019ba208-1f97-7ab8-b19d-5620b22b855e", "dose": {"holdS": 10}, "at": {"slope": "floor", "width": 0.4}, "demands": ["handWeight"], "posture": "front-support" }
          ],
          "words": {
            "en": {
              "name": "Front support",
              "purpose": "Hold yourself off the ground like a bridge.",
              "cues": ["My hands push the floor away.", "My body is one line.", "My arms are long."],
              "caution": "Rest on the knees.",
              "levels": ["Hands on a wall", "Hands on a bench", "Hands on the floor, wide", "Hands on the floor, narrow"],
              "factors": {
                "slope": { "name": "Hands on", "values": { "wall": "a wall", "bench": "a bench", "floor": "the floor" } },
                "width": { "name": "Between the hands" }
              },
              "errors": [
                { "seen": "The hips sag.", "cause": "The belly lets go.", "question": "Which part of you is lowest?" },
                { "seen": "The hips rise.", "cause": "The shoulders are behind the hands.", "question": "Where are your shoulders?" }
              ],
              "adaptations": {
                "space": { "calm": "A mat apart." },
                "task": { "arms": "Forearms carry." },
                "equipment": { "strength": "A higher box." },
                "people": { "sight": "A partner speaks." }
              }
            },
            "es": {
              "name": "Apoyo facial",
              "purpose": "Sostente sobre el suelo como un puente.",
              "cues": ["Mis manos empujan el suelo.", "Mi cuerpo es una línea.", "Mis brazos están largos."],
              "caution": "Descansa de rodillas.",
              "levels": ["Manos en la pared", "Manos en un banco", "Manos en el suelo, separadas", "Manos en el suelo, juntas"],
              "factors": {
                "slope": { "name": "Manos en", "values": { "wall": "la pared", "bench": "un banco", "floor": "el suelo" } },
                "width": { "name": "Entre las manos" }
              },
              "errors": [
                { "seen": "La cadera se hunde.", "cause": "La tripa cede.", "question": "¿Qué parte de ti está más abajo?" },
                { "seen": "La cadera sube.", "cause": "Los hombros quedan atrás.", "question": "¿Dónde están tus hombros?" }
              ],
              "adaptations": {
                "space": { "calm": "Una colchoneta aparte." },
                "task": { "arms": "Sostienen los antebrazos." },
                "equipment": { "strength": "Un plinto más alto." },
                "people": { "sight": "Una pareja habla." }
              }
            }
          }
        }
        """;
}
