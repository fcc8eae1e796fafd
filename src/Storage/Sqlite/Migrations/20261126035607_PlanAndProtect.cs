using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slantwise.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class PlanAndProtect : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "emergency_notes",
                table: "schools",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "head_conditions",
                table: "schools",
                type: "TEXT",
                nullable: false,
                defaultValue: "[1,2,3,4]");

            migrationBuilder.AddColumn<int>(
                name: "head_hold_cap_s",
                table: "schools",
                type: "INTEGER",
                nullable: false,
                defaultValue: 5);

            migrationBuilder.AddColumn<string>(
                name: "return_steps",
                table: "schools",
                type: "TEXT",
                nullable: false,
                defaultValue: "[{\"without\":1,\"dayCount\":21},{\"without\":2,\"dayCount\":21},{\"without\":3,\"dayCount\":21},{\"without\":4,\"dayCount\":21}]");

            migrationBuilder.AddColumn<int>(
                name: "spotting",
                table: "schools",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<bool>(
                name: "is_lifted_by_hand",
                table: "restrictions",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<DateOnly>(
                name: "since",
                table: "restrictions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "aims",
                table: "lessons",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "demonstration",
                table: "lessons",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<string>(
                name: "practice",
                table: "lessons",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "adaptations",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    pupil_id = table.Column<string>(type: "TEXT", nullable: false),
                    task_id = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_adaptations", x => new { x.school_id, x.pupil_id, x.task_id });
                    table.ForeignKey(
                        name: "fk_adaptations_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_adaptations_tasks",
                        columns: x => new { x.school_id, x.task_id },
                        principalTable: "tasks",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "halls",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    width_m = table.Column<double>(type: "REAL", nullable: false),
                    depth_m = table.Column<double>(type: "REAL", nullable: false),
                    things = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_halls", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_halls_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "incidents",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    minute_of_day = table.Column<int>(type: "INTEGER", nullable: true),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: true),
                    task_id = table.Column<string>(type: "TEXT", nullable: true),
                    place = table.Column<string>(type: "TEXT", nullable: false),
                    happened = table.Column<string>(type: "TEXT", nullable: false),
                    done = table.Column<string>(type: "TEXT", nullable: false),
                    changed = table.Column<string>(type: "TEXT", nullable: false),
                    pupil_ids = table.Column<string>(type: "TEXT", nullable: false),
                    written_at = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_incidents", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_incidents_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_incidents_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_incidents_tasks",
                        columns: x => new { x.school_id, x.task_id },
                        principalTable: "tasks",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "lesson_groups",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: false),
                    plan = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lesson_groups", x => new { x.school_id, x.lesson_id });
                    table.ForeignKey(
                        name: "fk_lesson_groups_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "lesson_risks",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: false),
                    notes = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lesson_risks", x => new { x.school_id, x.lesson_id });
                    table.ForeignKey(
                        name: "fk_lesson_risks_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "task_designs",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    task_id = table.Column<string>(type: "TEXT", nullable: false),
                    design = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_task_designs", x => new { x.school_id, x.task_id });
                    table.ForeignKey(
                        name: "fk_task_designs_tasks",
                        columns: x => new { x.school_id, x.task_id },
                        principalTable: "tasks",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "units",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    class_id = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    first_day = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    content = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_units", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_units_classes",
                        columns: x => new { x.school_id, x.class_id },
                        principalTable: "classes",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "lesson_spaces",
                columns: table => new
                {
                    school_id = table.Column<string>(type: "TEXT", nullable: false),
                    lesson_id = table.Column<string>(type: "TEXT", nullable: false),
                    hall_id = table.Column<string>(type: "TEXT", nullable: false),
                    layout = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lesson_spaces", x => new { x.school_id, x.lesson_id });
                    table.ForeignKey(
                        name: "fk_lesson_spaces_halls",
                        columns: x => new { x.school_id, x.hall_id },
                        principalTable: "halls",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_lesson_spaces_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_adaptations_task_id",
                table: "adaptations",
                columns: new[] { "school_id", "task_id" });

            migrationBuilder.CreateIndex(
                name: "ix_incidents_lesson_id",
                table: "incidents",
                columns: new[] { "school_id", "lesson_id" });

            migrationBuilder.CreateIndex(
                name: "ix_incidents_task_id",
                table: "incidents",
                columns: new[] { "school_id", "task_id" });

            migrationBuilder.CreateIndex(
                name: "ix_lesson_spaces_hall_id",
                table: "lesson_spaces",
                columns: new[] { "school_id", "hall_id" });

            migrationBuilder.CreateIndex(
                name: "ix_units_class_id",
                table: "units",
                columns: new[] { "school_id", "class_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "adaptations");

            migrationBuilder.DropTable(
                name: "incidents");

            migrationBuilder.DropTable(
                name: "lesson_groups");

            migrationBuilder.DropTable(
                name: "lesson_risks");

            migrationBuilder.DropTable(
                name: "lesson_spaces");

            migrationBuilder.DropTable(
                name: "task_designs");

            migrationBuilder.DropTable(
                name: "units");

            migrationBuilder.DropTable(
                name: "halls");

            migrationBuilder.DropColumn(
                name: "emergency_notes",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "head_conditions",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "head_hold_cap_s",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "return_steps",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "spotting",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "is_lifted_by_hand",
                table: "restrictions");

            migrationBuilder.DropColumn(
                name: "since",
                table: "restrictions");

            migrationBuilder.DropColumn(
                name: "aims",
                table: "lessons");

            migrationBuilder.DropColumn(
                name: "demonstration",
                table: "lessons");

            migrationBuilder.DropColumn(
                name: "practice",
                table: "lessons");
        }
    }
}
