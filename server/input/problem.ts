/** What is wrong with a request, by field, in words; and the status it is answered with. */
export class Problem extends Error {
  readonly status: 400 | 404 | 409 | 413 | 415 | 422 | 503;
  readonly fields: Readonly<Record<string, string>>;
  constructor(status: Problem["status"], message: string, fields: Readonly<Record<string, string>> = {}) {
    super(message);
    this.name = "Problem";
    this.status = status;
    this.fields = fields;
  }
}
