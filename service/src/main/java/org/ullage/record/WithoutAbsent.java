package org.ullage.record;

import com.fasterxml.jackson.annotation.JacksonAnnotationsInside;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Stands for Jackson's own annotation, two steps away from the records: javac and javadoc look for the constants in the annotations of what
 * they compile against, and javadoc in the annotations of those annotations, and warn where Jackson is not there.
 */
@JacksonAnnotationsInside
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.ANNOTATION_TYPE)
@interface WithoutAbsent {}
