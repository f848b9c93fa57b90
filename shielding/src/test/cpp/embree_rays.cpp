/* SPDX-License-Identifier: Apache-2.0 */
/*
 * Soil along rays through a surface of triangles, by the general-purpose ray tracer Embree 3, for comparison.
 *
 * Build: c++ -O3 -march=native -fopenmp -o embree_rays embree_rays.cpp -lembree3 -lm
 * Use:   embree_rays SCENE RAYS OUT MODE REPEATS
 *
 * SCENE: int32 rows, columns; double west, south, spacing; double heights[rows*columns], row 0 southernmost;
 *        double hull[8]: base x y z, axis x y z, radius, length (a cylinder with flat ends).
 * RAYS:  int64 count; count x { double origin[3], direction[3] }, every origin inside the hull.
 * OUT:   count x double path below the surface less the way inside the hull (m); NaN where hits do not alternate.
 * MODE:  i1 i4 i8 i16 (closest hit, filter rejects all), o1 o4 o8 o16 (any hit, filter rejects all),
 *        im om (streams of 256).
 * All crossings are summed by an intersection filter. Each cell is two triangles cut from south-west to north-east.
 */
#include <embree3/rtcore.h>
#include <math.h>
#include <omp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <time.h>

typedef struct { double o[3], d[3]; } Ray;
static float *path;
static signed char *turns;

static void filter(const struct RTCFilterFunctionNArguments *args) {
    unsigned n = args->N;
    for (unsigned i = 0; i < n; i++) {
        if (args->valid[i] != -1) {
            continue;
        }
        unsigned id = RTCRayN_id(args->ray, n, i);
        float t = RTCRayN_tfar(args->ray, n, i);
        float along = RTCRayN_dir_x(args->ray, n, i) * RTCHitN_Ng_x(args->hit, n, i)
                + RTCRayN_dir_y(args->ray, n, i) * RTCHitN_Ng_y(args->hit, n, i)
                + RTCRayN_dir_z(args->ray, n, i) * RTCHitN_Ng_z(args->hit, n, i);
        int out = along > 0;
        path[id] += out ? t : -t;
        turns[id] += out ? 1 : -1;
        args->valid[i] = 0;
    }
}

static double seconds(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static double cpu(void) {
    struct rusage u;
    getrusage(RUSAGE_SELF, &u);
    return u.ru_utime.tv_sec + 1e-6 * u.ru_utime.tv_usec;
}

/* Way inside the cylinder from a point in it. */
static double inside(const double *h, const Ray *r) {
    double s = 0, ds = 0, c[3], p[3];
    for (int k = 0; k < 3; k++) {
        c[k] = r->o[k] - h[k];
        s += c[k] * h[3 + k];
        ds += r->d[k] * h[3 + k];
    }
    double a = 0, b = 0, e = 0;
    for (int k = 0; k < 3; k++) {
        p[k] = c[k] - s * h[3 + k];
        double q = r->d[k] - ds * h[3 + k];
        a += q * q;
        b += q * p[k];
        e += p[k] * p[k];
    }
    double t = a > 1e-18 ? (-b + sqrt(b * b - a * (e - h[6] * h[6]))) / a : 1e30;
    double end = ds > 0 ? (h[7] - s) / ds : ds < 0 ? -s / ds : 1e30;
    return t < end ? t : end;
}

#define FILL(N) \
    for (int k = 0; k < N; k++) { \
        const Ray *r = &rays[from + (k < many ? k : 0)]; \
        valid[k] = k < many ? -1 : 0; \
        q.org_x[k] = r->o[0]; q.org_y[k] = r->o[1]; q.org_z[k] = r->o[2]; \
        q.dir_x[k] = r->d[0]; q.dir_y[k] = r->d[1]; q.dir_z[k] = r->d[2]; \
        q.tnear[k] = 0; q.tfar[k] = INFINITY; q.time[k] = 0; q.mask[k] = -1; q.flags[k] = 0; q.id[k] = from + k; \
    }

#define PACKET(N) \
    static void packet##N(RTCScene scene, struct RTCIntersectContext *c, const Ray *rays, long from, int many, \
            int any) { \
        int valid[N] __attribute__((aligned(64))); \
        if (any) { \
            struct RTCRay##N q; \
            FILL(N) \
            rtcOccluded##N(valid, scene, c, &q); \
        } else { \
            struct RTCRayHit##N w; \
            struct RTCRay##N q; \
            FILL(N) \
            w.ray = q; \
            for (int k = 0; k < N; k++) { w.hit.geomID[k] = RTC_INVALID_GEOMETRY_ID; w.hit.instID[0][k] = -1; } \
            rtcIntersect##N(valid, scene, c, &w); \
        } \
    }
PACKET(4)
PACKET(8)
PACKET(16)

static void ray1(struct RTCRay *q, const Ray *r, unsigned id) {
    q->org_x = r->o[0]; q->org_y = r->o[1]; q->org_z = r->o[2];
    q->dir_x = r->d[0]; q->dir_y = r->d[1]; q->dir_z = r->d[2];
    q->tnear = 0; q->tfar = INFINITY; q->time = 0; q->mask = -1; q->flags = 0; q->id = id;
}

static void cast(RTCScene scene, const Ray *rays, long from, int many, const char *mode) {
    struct RTCIntersectContext c;
    rtcInitIntersectContext(&c);
    c.flags = strchr(mode + 1, 'i') ? RTC_INTERSECT_CONTEXT_FLAG_INCOHERENT
            : RTC_INTERSECT_CONTEXT_FLAG_COHERENT;
    int any = mode[0] == 'o';
    if (mode[1] == 'm') {
        if (any) {
            struct RTCRay q[256];
            for (int k = 0; k < many; k++) ray1(&q[k], &rays[from + k], from + k);
            rtcOccluded1M(scene, &c, q, many, sizeof(q[0]));
        } else {
            struct RTCRayHit q[256];
            for (int k = 0; k < many; k++) {
                ray1(&q[k].ray, &rays[from + k], from + k);
                q[k].hit.geomID = RTC_INVALID_GEOMETRY_ID;
                q[k].hit.instID[0] = -1;
            }
            rtcIntersect1M(scene, &c, q, many, sizeof(q[0]));
        }
        return;
    }
    int n = atoi(mode + 1);
    for (int k = 0; k < many; k += n) {
        int left = many - k < n ? many - k : n;
        if (n == 1 && any) {
            struct RTCRay q;
            ray1(&q, &rays[from + k], from + k);
            rtcOccluded1(scene, &c, &q);
        } else if (n == 1) {
            struct RTCRayHit q;
            ray1(&q.ray, &rays[from + k], from + k);
            q.hit.geomID = RTC_INVALID_GEOMETRY_ID;
            q.hit.instID[0] = -1;
            rtcIntersect1(scene, &c, &q);
        } else if (n == 4) {
            packet4(scene, &c, rays, from + k, left, any);
        } else if (n == 8) {
            packet8(scene, &c, rays, from + k, left, any);
        } else {
            packet16(scene, &c, rays, from + k, left, any);
        }
    }
}

static void *whole(const char *name, long *size) {
    FILE *f = fopen(name, "rb");
    if (!f) { perror(name); exit(2); }
    fseek(f, 0, SEEK_END);
    *size = ftell(f);
    rewind(f);
    void *data = malloc(*size);
    if (fread(data, 1, *size, f) != (size_t) *size) { perror(name); exit(2); }
    fclose(f);
    return data;
}

int main(int argc, char **argv) {
    if (argc != 6) { fprintf(stderr, "embree_rays SCENE RAYS OUT MODE REPEATS\n"); return 2; }
    long size;
    char *s = (char *) whole(argv[1], &size);
    int rows = ((int *) s)[0], columns = ((int *) s)[1];
    double *head = (double *) (s + 8), *heights = head + 3, *hull = heights + (long) rows * columns;
    char *r = (char *) whole(argv[2], &size);
    long count = *(long *) r;
    Ray *rays = (Ray *) (r + 8);
    RTCDevice device = rtcNewDevice("threads=2");
    RTCScene scene = rtcNewScene(device);
    rtcSetSceneFlags(scene, RTC_SCENE_FLAG_ROBUST);
    rtcSetSceneBuildQuality(scene, RTC_BUILD_QUALITY_HIGH);
    RTCGeometry g = rtcNewGeometry(device, RTC_GEOMETRY_TYPE_TRIANGLE);
    float *v = (float *) rtcSetNewGeometryBuffer(g, RTC_BUFFER_TYPE_VERTEX, 0, RTC_FORMAT_FLOAT3, 12, (long) rows * columns);
    unsigned *t = (unsigned *) rtcSetNewGeometryBuffer(g, RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3, 12,
            2L * (rows - 1) * (columns - 1));
    for (int i = 0; i < rows; i++) {
        for (int j = 0; j < columns; j++) {
            long at = (long) i * columns + j;
            v[3 * at] = head[0] + j * head[2];
            v[3 * at + 1] = head[1] + i * head[2];
            v[3 * at + 2] = heights[at];
            if (i + 1 < rows && j + 1 < columns) {
                unsigned *k = t + 6 * ((long) i * (columns - 1) + j);
                k[0] = at; k[1] = at + 1; k[2] = at + columns + 1;
                k[3] = at; k[4] = at + columns + 1; k[5] = at + columns;
            }
        }
    }
    rtcSetGeometryIntersectFilterFunction(g, filter);
    rtcSetGeometryOccludedFilterFunction(g, filter);
    rtcCommitGeometry(g);
    rtcAttachGeometry(scene, g);
    double b = seconds();
    rtcCommitScene(scene);
    double build = seconds() - b;
    path = (float *) calloc(count, sizeof(float));
    turns = (signed char *) calloc(count, 1);
    double *way = (double *) calloc(count, sizeof(double));
    double best = 1e30, bestCpu = 1e30;
    for (int rep = 0; rep < atoi(argv[5]); rep++) {
        memset(path, 0, count * sizeof(float));
        memset(turns, 0, count);
        double w = seconds(), u = cpu();
#pragma omp parallel for schedule(dynamic, 16) num_threads(2)
        for (long from = 0; from < count; from += 256) {
            int many = count - from < 256 ? (int) (count - from) : 256;
            cast(scene, rays, from, many, argv[4]);
            for (long k = from; k < from + many; k++) {
                way[k] = turns[k] == 1 ? path[k] - inside(hull, &rays[k]) : NAN;
            }
        }
        w = seconds() - w;
        u = cpu() - u;
        best = w < best ? w : best;
        bestCpu = u < bestCpu ? u : bestCpu;
    }
    printf("%s %.4f %.4f %.3f\n", argv[4], count / best / 1e6, count / bestCpu / 1e6, build);
    FILE *f = fopen(argv[3], "wb");
    fwrite(way, sizeof(double), count, f);
    fclose(f);
    rtcReleaseScene(scene);
    rtcReleaseDevice(device);
    return 0;
}
